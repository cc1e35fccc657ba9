package rigmorrow.data.workbook;

import java.util.ArrayList;
import java.util.List;
import org.dhatim.fastexcel.reader.Sheet;
import org.dhatim.fastexcel.reader.SheetVisibility;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.problem.Words;
import rigmorrow.data.table.HeaderJudge;
import rigmorrow.data.table.HeaderRow;
import rigmorrow.data.table.Table;
import rigmorrow.data.table.TableChoice;
import rigmorrow.data.table.TableOptions;
import rigmorrow.data.table.TableRow;

/** Finds the sheet to read: the one whose header is known, or the one that the user names. */
final class SheetChoice {
  /** How well a sheet's header is known; later is better. */
  private enum Header {
    MISSING,
    UNKNOWN,
    KNOWN,
    COMPLETE
  }

  private final OpenWorkbook workbook;
  private final TableOptions options;
  private final HeaderJudge judge;
  private final Problems problems;

  SheetChoice(OpenWorkbook workbook, TableOptions options, HeaderJudge judge, Problems problems) {
    this.workbook = workbook;
    this.options = options;
    this.judge = judge;
    this.problems = problems;
  }

  /**
   * The sheet to read. Hidden ones are read only when the options name them.
   *
   * @throws InputException when none is right, or several are
   */
  Sheet sheet() throws InputException {
    List<Sheet> sheets = workbook.sheets();
    String named = options.sheet();
    if (named != null) {
      return named(sheets, named);
    }
    List<Sheet> best = new ArrayList<>();
    Header bestHeader = Header.MISSING;
    List<String> hidden = new ArrayList<>();
    for (Sheet sheet : sheets) {
      Header header = header(sheet);
      if (sheet.getVisibility() != SheetVisibility.VISIBLE) {
        if (header == Header.COMPLETE) {
          hidden.add(sheet.getName());
        }
      } else if (header.compareTo(bestHeader) > 0) {
        best = new ArrayList<>(List.of(sheet));
        bestHeader = header;
      } else if (header == bestHeader) {
        best.add(sheet);
      }
    }
    if (bestHeader != Header.COMPLETE && !hidden.isEmpty()) {
      throw ask(hidden, "to name the hidden sheet that is meant: ");
    }
    if (bestHeader == Header.MISSING) {
      throw Table.nothing(judge, problems);
    }
    if (best.size() > 1) {
      throw bestHeader == Header.UNKNOWN
          ? ask(names(best), "a sheet with the columns " + judge.needed() + "; there is none of: ")
          : ask(names(best), "to name the sheet that is meant: ");
    }
    return best.get(0);
  }

  private Sheet named(List<Sheet> sheets, String named) throws InputException {
    for (Sheet sheet : sheets) {
      if (sheet.getName().equals(named)) {
        return sheet;
      }
    }
    problems.add(
        "file",
        TableChoice.SHEET.name(judge, options),
        named,
        "a sheet: " + Words.choice(names(sheets), named));
    throw new InputException(problems.found());
  }

  private InputException ask(List<String> names, String accepted) {
    problems.add(
        "file", TableChoice.SHEET.name(judge, options), "", accepted + String.join(", ", names));
    return new InputException(problems.found());
  }

  private Header header(Sheet sheet) throws InputException {
    SheetCells cells = new SheetCells();
    List<TableRow> first = new ArrayList<>();
    workbook.read(
        sheet,
        (number, row) -> {
          TableRow read = WorkbookTable.row(number, row, cells);
          if (!read.blank()) {
            first.add(read);
          }
          return first.size() < HeaderRow.MOST_LOOKED_AT;
        });
    if (first.isEmpty()) {
      return Header.MISSING;
    }
    TableRow header = first.get(HeaderRow.in(first, judge));
    if (judge.complete(header)) {
      return Header.COMPLETE;
    }
    return judge.known(header) > 0 ? Header.KNOWN : Header.UNKNOWN;
  }

  private static List<String> names(List<Sheet> sheets) {
    return sheets.stream().map(Sheet::getName).toList();
  }
}
