package rigmorrow.data.csv;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.table.CellEdit;
import rigmorrow.data.table.HeaderJudge;
import rigmorrow.data.table.ProblemColumn;
import rigmorrow.data.table.Table;
import rigmorrow.data.table.TableCell;
import rigmorrow.data.table.TableOptions;
import rigmorrow.data.table.TableRow;

/**
 * Copies a CSV file with its problems beside its rows, in one more column; everything else but the
 * cells that were mended stays as it is, byte for byte. A column of problems that is there already
 * is written anew. What the file's character set lacks is told there by its number, such as
 * [U+0142].
 */
public final class CsvAnnotator {
  private final CsvSource source;
  private final int headerNumber;
  private final List<CellEdit> mended;
  private final StringBuilder copy = new StringBuilder();
  private int copied;

  private CsvAnnotator(CsvSource source, int headerNumber, List<CellEdit> mended) {
    this.source = source;
    this.headerNumber = headerNumber;
    this.mended = mended;
  }

  /**
   * The annotated copy.
   *
   * @param bytes of the file
   * @param told what is wrong with it
   * @param mended cells that have another text in the copy
   * @param file its name
   * @throws InputException when it cannot be split into rows, has none, or cannot be kept byte for
   *     byte
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
    CsvSource source = CsvSource.open(bytes, options, judge, problems);
    refuseOthers(source, bytes, problems);
    int header = source.headerNumber(judge);
    if (header == 0) {
      throw Table.nothing(judge, problems);
    }
    String text = new CsvAnnotator(source, header, mended).copy(told);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(bytes, 0, source.text().markBytes());
    out.writeBytes(text.getBytes(source.text().charset()));
    return out.toByteArray();
  }

  /** Some character sets write a text in several ways, and some are only read. */
  private static void refuseOthers(CsvSource source, byte[] bytes, Problems problems)
      throws InputException {
    Charset charset = source.text().charset();
    int start = source.text().markBytes();
    byte[] body = Arrays.copyOfRange(bytes, start, bytes.length);
    if (!charset.canEncode() || !Arrays.equals(source.text().text().getBytes(charset), body)) {
      throw problems.refusal(
          source.text().charsetName() + ", which would not be kept byte for byte",
          "a list in UTF-8");
    }
  }

  private String copy(List<InputProblem> told) {
    Map<Integer, List<InputProblem>> byRow =
        told.stream().collect(Collectors.groupingBy(problem -> problem.place().row()));
    Set<Integer> besideThem = rowsBesideWhichToTell();
    List<InputProblem> others =
        told.stream().filter(problem -> !besideThem.contains(problem.place().row())).toList();
    CsvScanner scanner = source.scanner();
    TableRow header = null;
    int column = 0;
    TableRow row = scanner.next();
    while (row != null) {
      if (row.number() == headerNumber) {
        header = row;
        int there = ProblemColumn.in(header);
        column = there < 0 ? header.cells().size() : there;
        put(row, scanner.spans(), column, ProblemColumn.header(others));
      } else if (besideThem.contains(row.number())) {
        // A row with more cells than the header has none of ours where ours should be.
        boolean longer = header != null && row.cells().size() > header.cells().size();
        String words = ProblemColumn.besideRow(byRow.getOrDefault(row.number(), List.of()));
        put(row, scanner.spans(), longer ? row.cells().size() : column, words);
      }
      row = scanner.next();
    }
    String text = source.text().text();
    return copy.append(text, copied, text.length()).toString();
  }

  /** Rows below the header, but for one that a quote opens and nothing closes. */
  private Set<Integer> rowsBesideWhichToTell() {
    Set<Integer> rows = new HashSet<>();
    CsvScanner scanner = source.scanner();
    TableRow row = scanner.next();
    while (row != null) {
      if (row.number() > headerNumber && !scanner.openQuote()) {
        rows.add(row.number());
      }
      row = scanner.next();
    }
    return rows;
  }

  /**
   * Puts what was mended into a row, and words into the cell at an index, at its end when the row
   * is shorter.
   */
  private void put(TableRow row, List<CsvScanner.Span> cells, int index, String words) {
    NavigableMap<Integer, String> wanted = new TreeMap<>();
    for (CellEdit edit : mended) {
      if (edit.row() == row.number()) {
        wanted.put(edit.column() - 1, edit.text());
      }
    }
    wanted.put(index, words);
    int filled = cells.size();
    for (Map.Entry<Integer, String> cell : wanted.entrySet()) {
      String text = quotedIfNeeded(writable(cell.getValue()));
      if (cell.getKey() < cells.size()) {
        CsvScanner.Span old = cells.get(cell.getKey());
        copy.append(source.text().text(), copied, old.start()).append(text);
        copied = old.end();
      } else if (!text.isEmpty()) {
        int end = cells.get(cells.size() - 1).end();
        copy.append(source.text().text(), copied, end);
        copy.append(String.valueOf(source.delimiter()).repeat(cell.getKey() - filled + 1));
        copy.append(text);
        copied = end;
        filled = cell.getKey() + 1;
      }
    }
  }

  /** The words with numbers for what the character set lacks, as far as a cell has room. */
  private String writable(String words) {
    CharsetEncoder encoder = source.text().charset().newEncoder();
    StringBuilder writable = new StringBuilder();
    words
        .codePoints()
        .forEach(
            sign -> {
              String letter = Character.toString(sign);
              writable.append(encoder.canEncode(letter) ? letter : String.format("[U+%04X]", sign));
            });
    return writable.substring(0, Math.min(writable.length(), TableCell.LONGEST));
  }

  private String quotedIfNeeded(String words) {
    boolean needed =
        words.chars().anyMatch(sign -> sign == source.delimiter() || "\"\r\n".indexOf(sign) >= 0);
    return needed ? "\"" + words.replace("\"", "\"\"") + "\"" : words;
  }
}
