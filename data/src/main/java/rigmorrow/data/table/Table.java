package rigmorrow.data.table;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Place;
import rigmorrow.data.problem.Problems;

/**
 * A table as it stands in its file: a header and the rows below it that are not blank.
 *
 * @param form what kind of file it is
 * @param above rows above the header in which something stands, such as a title; they are not read
 * @param header the first row that is not blank, or below titles the only one that is a header
 * @param rows below the header, without those in which nothing stands
 */
public record Table(TableForm form, List<TableRow> above, TableRow header, List<TableRow> rows) {
  public Table {
    above = List.copyOf(above);
    rows = List.copyOf(rows);
  }

  /**
   * Takes the rows of a file. The problems that an annotated copy tells beside its rows are left
   * out: they are about an earlier state of the row.
   *
   * @param rows that are not blank
   * @param judge knows what a row stands for
   * @param problems takes what is wrong with the header
   * @throws InputException when there is no header, or one that cannot be read
   */
  public static Table of(TableForm form, List<TableRow> rows, HeaderJudge judge, Problems problems)
      throws InputException {
    if (rows.isEmpty()) {
      throw nothing(judge, problems);
    }
    int told = ProblemColumn.in(rows.get(HeaderRow.in(rows, judge)));
    List<TableRow> read =
        told < 0
            ? rows
            : rows.stream().map(row -> row.without(told)).filter(row -> !row.blank()).toList();
    if (read.isEmpty()) {
      throw nothing(judge, problems);
    }
    int header = HeaderRow.in(read, judge);
    Table table =
        new Table(
            form, read.subList(0, header), read.get(header), read.subList(header + 1, read.size()));
    table.check(judge, problems);
    return table;
  }

  /** The refusal of a file in which nothing stands. */
  public static InputException nothing(HeaderJudge judge, Problems problems) {
    return problems.refusal("", "a header row and at least one " + judge.rowWord());
  }

  /**
   * This table with other text in some cells. A row in which nothing stands after all of them is
   * left out, as it would be in a file.
   *
   * @throws IllegalArgumentException when there is no such cell
   */
  public Table with(List<CellEdit> edits) {
    int width = header.cells().size();
    TableRow head = header;
    Map<Integer, TableRow> others = new LinkedHashMap<>();
    rows.forEach(row -> others.put(row.number(), row));
    for (CellEdit edit : edits) {
      TableRow row = edit.row() == header.number() ? head : others.get(edit.row());
      if (row == null) {
        throw new IllegalArgumentException(
            "There is no row " + edit.row() + " with anything in it.");
      }
      TableRow now = row.with(edit, width);
      if (edit.row() == header.number()) {
        head = now;
      } else {
        others.put(edit.row(), now);
      }
    }
    return new Table(
        form, above, head, others.values().stream().filter(row -> !row.blank()).toList());
  }

  /** Which row was taken as the header, for the user; empty where nothing stands above it. */
  public String headerTaken() {
    if (above.isEmpty()) {
      return "";
    }
    TableRow last = above.get(above.size() - 1);
    String others = above.size() == 1 ? "row " : "rows " + above.get(0).number() + " to ";
    return "row %d was taken as the header; %s%d above it %s not read ('%s')"
        .formatted(
            header.number(),
            others,
            last.number(),
            above.size() == 1 ? "was" : "were",
            above.get(0).text(Math.max(0, above.get(0).firstFilled(0))));
  }

  /** The place of a row. */
  public Place place(TableRow row) {
    return Place.cell(form.sheet(), row.number(), 0);
  }

  /**
   * The place of a cell.
   *
   * @param column counted from 0
   */
  public Place place(TableRow row, int column) {
    return Place.cell(form.sheet(), row.number(), column + 1);
  }

  /**
   * Notes why a row cannot be split into cells for sure.
   *
   * @return false when it can
   */
  public boolean refuses(TableRow row, Problems problems) {
    int beyond = row.firstFilled(header.cells().size());
    TableFault fault = row.fault();
    if (fault != null) {
      problems.add(place(row), "", fault.value(), fault.accepted());
    } else if (beyond >= 0) {
      String divided =
          form.delimiter() == null ? "" : "; a cell with the delimiter in it stands in quotes";
      problems.add(
          place(row, beyond),
          "",
          row.text(beyond),
          "at most %d cells, as in the header%s".formatted(header.cells().size(), divided));
    }
    return fault != null || beyond >= 0;
  }

  private void check(HeaderJudge judge, Problems problems) throws InputException {
    TableFault fault = header.fault();
    if (fault != null) {
      problems.add(place(header), "", fault.value(), fault.accepted());
      problems.throwIfAny();
    }
    for (int column = 0; column < header.cells().size(); column++) {
      TableFault cell = header.cell(column).fault();
      if (cell != null) {
        problems.add(place(header, column), "", cell.value(), cell.accepted());
      }
    }
    problems.throwIfAny();
    int first = header.firstFilled(0);
    if (header.firstFilled(first + 1) < 0) {
      String divided = form.delimiter() == null ? "" : " divided by comma, semicolon or tab";
      problems.add(
          place(header),
          "",
          header.text(first),
          "several columns" + divided + "; this header has one column");
      problems.throwIfAny();
    }
    if (rows.isEmpty()) {
      problems.add(
          Place.cell(form.sheet(), header.number() + 1, 0),
          "",
          "",
          "at least one " + judge.rowWord() + " below the header");
    }
  }
}
