package rigmorrow.data.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
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
import rigmorrow.data.table.HeaderJudge;
import rigmorrow.data.table.ProblemColumn;
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

  /** Rows that are not blank, the header first. */
  private final List<TableRow> rows = new ArrayList<>();

  private WorkbookAnnotator(OpenWorkbook workbook, Worksheet copy, List<InputProblem> told) {
    this.workbook = workbook;
    this.copy = copy;
    this.told = told;
    this.marked = told.stream().map(InputProblem::place).collect(Collectors.toSet());
  }

  /**
   * The annotated copy.
   *
   * @param bytes of the file
   * @param told what is wrong with it
   * @param file its name
   * @throws InputException when the file or the sheet cannot be read
   */
  public static byte[] annotated(
      byte[] bytes, TableOptions options, HeaderJudge judge, List<InputProblem> told, String file)
      throws InputException {
    Problems problems = new Problems(file);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (OpenWorkbook workbook = OpenWorkbook.open(bytes, problems)) {
      Sheet sheet = new SheetChoice(workbook, judge, problems).sheet(options.sheet());
      try (Workbook writing = new Workbook(out, "rigmorrow", null)) {
        Worksheet copy = writing.newWorksheet(sheet.getName());
        new WorkbookAnnotator(workbook, copy, told).copy(sheet);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a workbook in memory cannot be written", e);
    }
    return out.toByteArray();
  }

  private void copy(Sheet sheet) throws InputException {
    workbook.read(
        sheet,
        (number, row) -> {
          TableRow read = WorkbookTable.row(number, row, cells);
          if (!read.blank()) {
            rows.add(read);
          }
          return true;
        });
    int there = ProblemColumn.in(rows.get(0));
    int column = there >= 0 ? there : rows.stream().mapToInt(r -> r.cells().size()).max().orElse(0);
    workbook.read(
        sheet,
        (number, row) -> {
          row.stream()
              .filter(cell -> cell != null && cell.getColumnIndex() != there)
              .forEach(cell -> copy(number - 1, cell));
          return true;
        });
    for (CellRange merge : workbook.merges(sheet)) {
      copy.range(merge.top() - 1, merge.left(), merge.bottom() - 1, merge.right()).merge();
    }
    for (Place place : marked) {
      if (place.row() > 0 && place.column() > 0) {
        mark(place);
      }
    }
    tell(column);
  }

  /** Writes the problems, those that belong to no row behind the header of their column. */
  private void tell(int column) {
    Map<Integer, List<InputProblem>> byRow =
        told.stream().collect(Collectors.groupingBy(problem -> problem.place().row()));
    Set<Integer> besideThem =
        rows.stream().skip(1).map(TableRow::number).collect(Collectors.toSet());
    List<InputProblem> others =
        told.stream().filter(problem -> !besideThem.contains(problem.place().row())).toList();
    copy.value(rows.get(0).number() - 1, column, ProblemColumn.header(others));
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
