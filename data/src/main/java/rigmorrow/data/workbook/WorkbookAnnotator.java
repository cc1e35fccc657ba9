package rigmorrow.data.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.Sheet;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.problem.Place;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.table.CellEdit;
import rigmorrow.data.table.HeaderJudge;
import rigmorrow.data.table.ProblemColumn;
import rigmorrow.data.table.Table;
import rigmorrow.data.table.TableCell;
import rigmorrow.data.table.TableOptions;
import rigmorrow.data.table.TableRow;

/**
 * Copies the sheet that is read into a workbook of its own, with its problems beside its rows in
 * one more column and the cells they are about marked. Values and number formats are kept, formulas
 * become the values that were saved with them, looks are not kept.
 */
public final class WorkbookAnnotator {
  private static final String MARKED = "FFE0B2";
  private static final int WIDE = 80;

  /** Days from 1900-01-01 to 1904-01-01 as spreadsheets count them. */
  private static final BigDecimal DAYS_TO_1904 = BigDecimal.valueOf(1_462);

  private final SheetCells cells = new SheetCells();
  private final OpenWorkbook workbook;
  private final Worksheet copy;
  private final List<InputProblem> told;
  private final Set<Place> marked;
  private final List<CellEdit> mended;
  private final Set<Place> mendedPlaces;

  private final SheetRows rows;

  private WorkbookAnnotator(
      OpenWorkbook workbook,
      Worksheet copy,
      SheetRows rows,
      List<InputProblem> told,
      List<CellEdit> mended) {
    this.mended = mended;
    this.mendedPlaces =
        mended.stream()
            .map(edit -> Place.cell("", edit.row(), edit.column()))
            .collect(Collectors.toSet());
    this.workbook = workbook;
    this.copy = copy;
    this.rows = rows;
    this.told = told;
    this.marked = told.stream().map(InputProblem::place).collect(Collectors.toSet());
  }

  /**
   * The annotated copy.
   *
   * @param bytes of the file
   * @param told what is wrong with it
   * @param mended cells that have another text in the copy
   * @param file its name
   * @throws InputException when the file or the sheet cannot be read, nothing stands in it, or it
   *     has no room for one more column
   */
  public static byte[] annotated(
      byte[] bytes,
      TableOptions options,
      HeaderJudge judge,
      List<InputProblem> told,
      List<CellEdit> mended,
      String file)
      throws InputException {
    Problems problems = new Problems(file);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (OpenWorkbook workbook = OpenWorkbook.open(bytes, problems)) {
      Sheet sheet = new SheetChoice(workbook, options, judge, problems).sheet();
      List<TableRow> filled = WorkbookTable.rows(workbook, sheet, problems);
      if (filled.isEmpty()) {
        throw Table.nothing(judge, problems);
      }
      SheetRows rows = SheetRows.of(filled, judge);
      int width = rows.width();
      int there = ProblemColumn.in(rows.header());
      if (there < 0 && width == WorkbookTable.MOST_COLUMNS) {
        Place last = Place.cell(sheet.getName(), rows.header().number(), width);
        problems.add(last, "", width + " columns", "one less, to leave room for the problems");
        throw new InputException(problems.found());
      }
      int bottom = filled.get(filled.size() - 1).number();
      List<CellRange> merges =
          new MergedCells(sheet.getName(), workbook.merges(sheet)).within(bottom, width, problems);
      try (Workbook writing = new Workbook(out, "rigmorrow", null)) {
        Worksheet copy = writing.newWorksheet(sheet.getName());
        new WorkbookAnnotator(workbook, copy, rows, told, mended).copy(sheet, merges, there);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a workbook in memory cannot be written", e);
    }
    return out.toByteArray();
  }

  /**
   * @param there column of the problems that were told before; below 0 for none
   */
  private void copy(Sheet sheet, List<CellRange> merges, int there) throws InputException {
    int width = rows.width();
    Set<Integer> filled = rows.all().stream().map(TableRow::number).collect(Collectors.toSet());
    workbook.read(
        sheet,
        (number, row) -> {
          // Formats are often set for whole rows and columns, far beyond what is filled in.
          row.stream()
              .filter(cell -> cell != null && filled.contains(number))
              .filter(cell -> cell.getColumnIndex() < width && cell.getColumnIndex() != there)
              .filter(cell -> !isMended(number, cell.getColumnIndex() + 1))
              .forEach(cell -> copy(number - 1, cell));
          return true;
        });
    merges.forEach(this::merge);
    for (CellEdit edit : mended) {
      if (!edit.text().isEmpty()) {
        copy.value(edit.row() - 1, edit.column() - 1, edit.text());
      }
    }
    for (Place place : marked) {
      if (place.row() > 0 && place.column() > 0) {
        mark(place);
      }
    }
    tell(there < 0 ? width : there);
  }

  private boolean isMended(int row, int column) {
    return mendedPlaces.contains(Place.cell("", row, column));
  }

  /** Cells that are merged, unless one of them was mended: then each gets what it stands for. */
  private void merge(CellRange merge) {
    boolean apart =
        mended.stream()
            .anyMatch(
                edit ->
                    merge.top() <= edit.row()
                        && edit.row() <= merge.bottom()
                        && merge.left() == edit.column() - 1);
    if (!apart) {
      copy.range(merge.top() - 1, merge.left(), merge.bottom() - 1, merge.right()).merge();
      return;
    }
    String shown =
        rows.all().stream()
            .filter(row -> row.number() == merge.top())
            .findFirst()
            .map(row -> row.text(merge.left()))
            .orElse("");
    for (int row = merge.top() + 1; row <= merge.bottom() && !shown.isEmpty(); row++) {
      if (!isMended(row, merge.left() + 1)) {
        copy.value(row - 1, merge.left(), shown);
      }
    }
  }

  /** Writes the problems, those that belong to no row behind the header of their column. */
  private void tell(int column) {
    Map<Integer, List<InputProblem>> byRow =
        told.stream().collect(Collectors.groupingBy(problem -> problem.place().row()));
    Set<Integer> besideThem =
        rows.belowHeader().stream().map(TableRow::number).collect(Collectors.toSet());
    List<InputProblem> others =
        told.stream().filter(problem -> !besideThem.contains(problem.place().row())).toList();
    copy.value(rows.header().number() - 1, column, ProblemColumn.header(others));
    for (int number : besideThem) {
      String words = ProblemColumn.besideRow(byRow.getOrDefault(number, List.of()));
      if (!words.isEmpty()) {
        copy.value(number - 1, column, words);
      }
    }
    copy.width(column, WIDE);
  }

  private void copy(int row, Cell cell) {
    int column = cell.getColumnIndex();
    Object value = cell.getValue();
    if (value instanceof BigDecimal number) {
      copy.value(row, column, shifted(cell, number));
    } else if (value instanceof Boolean yes) {
      copy.value(row, column, yes);
    } else if (value == null && cell.getType() == CellType.FORMULA) {
      copy.formula(row, column, cell.getFormula());
    } else if (value != null) {
      String text = SheetCells.unescaped(value.toString());
      copy.value(row, column, text.substring(0, Math.min(text.length(), TableCell.LONGEST)));
    }
    String format = cell.getDataFormatString();
    if (format != null) {
      copy.style(row, column).format(format).set();
    }
  }

  /** The copy counts days from 1900, whatever the file does. */
  private BigDecimal shifted(Cell cell, BigDecimal number) {
    CellFormat format = cells.format(cell);
    boolean day = (format.date() || format.time()) && number.compareTo(BigDecimal.ONE) >= 0;
    return day && workbook.countsFrom1904() ? number.add(DAYS_TO_1904) : number;
  }

  private void mark(Place place) {
    copy.style(place.row() - 1, place.column() - 1).fillColor(MARKED).set();
  }
}
