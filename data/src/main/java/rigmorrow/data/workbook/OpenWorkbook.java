package rigmorrow.data.workbook;

import java.io.ByteArrayInputStream;
import java.io.Closeable;
import java.io.IOException;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.xml.stream.XMLStreamException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;

/** A workbook whose sheets can be read without fear for memory. */
final class OpenWorkbook implements Closeable {
  /** Takes the rows of a sheet. */
  interface RowTaker {
    /**
     * Takes one row.
     *
     * @param number as the spreadsheet shows it
     * @return false to end the reading
     */
    boolean take(int number, Row row) throws InputException;
  }

  private final WorkbookParts parts;
  private final ReadableWorkbook workbook;
  private final Map<String, String> sheetParts;
  private final int sharedTexts;
  private final Problems problems;
  private final Map<Sheet, SheetGuard> guards = new HashMap<>();

  private OpenWorkbook(
      WorkbookParts parts,
      ReadableWorkbook workbook,
      Map<String, String> sheetParts,
      int sharedTexts,
      Problems problems) {
    this.parts = parts;
    this.workbook = workbook;
    this.sheetParts = sheetParts;
    this.sharedTexts = sharedTexts;
    this.problems = problems;
  }

  /**
   * Opens a file.
   *
   * @throws InputException when it is no workbook, is damaged, or holds too much
   */
  static OpenWorkbook open(byte[] bytes, Problems problems) throws InputException {
    WorkbookParts parts = WorkbookParts.unpack(bytes, problems);
    try {
      PartXml.Paths paths = PartXml.paths(needed(parts, "[Content_Types].xml"));
      byte[] texts = parts.part(paths.sharedTexts());
      int sharedTexts = texts == null ? 0 : PartXml.count(texts, "si");
      String folder = paths.workbook().substring(0, paths.workbook().lastIndexOf('/') + 1);
      Map<String, String> sheetParts = PartXml.relations(needed(parts, paths.relations()), folder);
      parts.makeTextsOfDates(sheetParts.values());
      boolean styles = parts.part(paths.styles()) != null;
      ReadableWorkbook workbook =
          new ReadableWorkbook(
              new ByteArrayInputStream(parts.packed()), new ReadingOptions(styles, true));
      return new OpenWorkbook(parts, workbook, sheetParts, sharedTexts, problems);
    } catch (IOException | XMLStreamException | RuntimeException e) {
      // The library answers a damaged file with whatever goes wrong first.
      throw WorkbookParts.damaged(problems);
    }
  }

  /** The sheets in the order of their tabs. */
  List<Sheet> sheets() {
    return workbook.getSheets().toList();
  }

  /** True when days are counted from 1904. */
  boolean countsFrom1904() {
    return workbook.isDate1904();
  }

  /** Hands out the rows of a sheet that have cells, from the top. */
  void read(Sheet sheet, RowTaker taker) throws InputException {
    Iterator<Integer> numbers = guard(sheet).rowNumbers().iterator();
    try (Stream<Row> rows = sheet.openStream()) {
      Iterator<Row> iterator = rows.iterator();
      boolean more = true;
      while (more && iterator.hasNext()) {
        Row row = iterator.next();
        more = taker.take(numbers.next(), row);
      }
    } catch (IOException | RuntimeException e) {
      throw WorkbookParts.damaged(problems);
    }
  }

  /** Cells of a sheet that are merged. */
  List<CellRange> merges(Sheet sheet) throws InputException {
    return guard(sheet).merges();
  }

  @Override
  public void close() throws IOException {
    workbook.close();
  }

  private SheetGuard guard(Sheet sheet) throws InputException {
    SheetGuard known = guards.get(sheet);
    if (known != null) {
      return known;
    }
    SheetGuard guard = new SheetGuard(sheet.getName(), sharedTexts, problems);
    String name = sheetParts.get(sheet.getId());
    byte[] part = name == null ? null : parts.part(name);
    try {
      if (part != null) {
        guard.check(part);
      }
    } catch (XMLStreamException | RuntimeException e) {
      throw WorkbookParts.damaged(problems);
    }
    guards.put(sheet, guard);
    return guard;
  }

  private static byte[] needed(WorkbookParts parts, String name) throws IOException {
    byte @Nullable [] part = parts.part(name);
    if (part == null) {
      throw new IOException(name + " is missing");
    }
    return part;
  }
}
