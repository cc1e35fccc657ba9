package rigmorrow.data.shotcsv;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/** Reads a shot list from CSV and writes one; the format is described in FORMAT.md. */
public final class ShotListCsv {
  private static final long LARGEST_BYTES = 64L << 20;
  private static final Pattern DELIMITER_LINE = Pattern.compile("(?i)sep=(.)(?:\\r\\n|\\n|\\r)");

  private ShotListCsv() {}

  /**
   * Reads a shot list.
   *
   * @param floor what its recipes and setups are looked up in
   * @throws InputException with every problem of the file, also when it cannot be opened
   */
  public static CsvReading read(Path file, Floor floor, CsvOptions options) throws InputException {
    Problems problems = new Problems(file.toString());
    byte[] bytes = new byte[0];
    try {
      if (Files.size(file) > LARGEST_BYTES) {
        problems.add("file", "", Files.size(file) + " bytes", "a file of at most 64 MiB");
      } else {
        bytes = Files.readAllBytes(file);
      }
    } catch (IOException e) {
      problems.add("file", "", e.toString(), "a file that exists and can be read");
    }
    problems.throwIfAny();
    return read(bytes, file.toString(), floor, options);
  }

  /**
   * Reads a shot list.
   *
   * @param bytes of the file
   * @param name of the file, for its problems
   * @param floor what its recipes and setups are looked up in
   * @throws InputException with every problem of the file
   */
  public static CsvReading read(byte[] bytes, String name, Floor floor, CsvOptions options)
      throws InputException {
    Problems problems = new Problems(name);
    CsvText text = CsvText.decode(bytes, options.charset(), problems);
    int start = 0;
    Character delimiter = options.delimiter();
    Matcher line = DELIMITER_LINE.matcher(text.text());
    if (line.lookingAt()) {
      start = line.end();
      delimiter = delimiter == null ? given(line.group(1), problems) : delimiter;
      problems.throwIfAny();
    }
    if (delimiter == null) {
      delimiter = found(text.text(), start);
    }
    List<CsvScanner.Row> rows = rows(text.text(), start, delimiter);
    if (rows.isEmpty()) {
      problems.add("file", "", "", "a header row and at least one job");
      problems.throwIfAny();
    }
    return read(text.charset(), delimiter, rows, floor, options, problems);
  }

  /**
   * A shot list as UTF-8 CSV with byte order mark, comma and decimal point. Reading it back with
   * the list's date and days gives an equal list; blanks around a text are lost.
   *
   * @throws IllegalArgumentException when the list has pins, which a CSV file cannot keep
   */
  public static byte[] write(ShotList shotList) {
    return CsvWriter.write(shotList);
  }

  private static CsvReading read(
      String charset,
      char delimiter,
      List<CsvScanner.Row> rows,
      Floor floor,
      CsvOptions options,
      Problems problems)
      throws InputException {
    CsvScanner.Row first = rows.get(0);
    List<CsvScanner.Row> body = rows.subList(1, rows.size());
    CsvScanner.Fault fault = first.fault();
    if (fault != null) {
      problems.add("row " + first.number(), "", fault.value(), fault.accepted());
      problems.throwIfAny();
    }
    if (first.cells().size() == 1) {
      problems.add(
          "row " + first.number(),
          "",
          first.cell(0),
          "several columns divided by comma, semicolon or tab; this header has one column");
      problems.throwIfAny();
    }
    CsvHeader header = new CsvHeader(first, floor, problems);
    if (body.isEmpty()) {
      problems.add("row " + (first.number() + 1), "", "", "at least one job below the header");
    }
    Set<Character> marks = marks(header, body);
    Character mark = options.decimalMark();
    if (mark == null && marks.size() == 1) {
      mark = marks.iterator().next();
    }
    CellReader cells =
        new CellReader(problems, options.date(), mark, options.decimalMark() != null);
    List<ShotJob> jobs =
        new JobRows(header, floor, problems, cells).jobs(body, first.cells().size());
    problems.throwIfAny();
    List<String> remarks = new ArrayList<>();
    if (marks.size() > 1) {
      remarks.add(
          "some numbers have a decimal comma, others a decimal point; each was read by itself");
    }
    CsvNotes notes =
        new CsvNotes(charset, delimiter, mark, unknown(header, body), cells.conversions(), remarks);
    return new CsvReading(new ShotList(options.date(), options.days(), jobs, List.of()), notes);
  }

  private static @Nullable Character given(String delimiter, Problems problems) {
    if (CsvOptions.DELIMITERS.contains(delimiter)) {
      return delimiter.charAt(0);
    }
    problems.add("file", "sep=", delimiter, "comma, semicolon or tab");
    return null;
  }

  /** The delimiter by which most headers are known; among equals, the one that gives most cells. */
  private static char found(String text, int start) {
    char best = CsvOptions.DELIMITERS.charAt(0);
    long bestScore = -1;
    for (char candidate : CsvOptions.DELIMITERS.toCharArray()) {
      CsvScanner scanner = new CsvScanner(text, start, candidate);
      CsvScanner.Row row = scanner.next();
      while (row != null && row.blank()) {
        row = scanner.next();
      }
      if (row != null) {
        long score = CsvHeader.knownIn(row) * text.length() + row.cells().size();
        if (score > bestScore) {
          best = candidate;
          bestScore = score;
        }
      }
    }
    return best;
  }

  /** The rows that are not blank; the first is the header. */
  private static List<CsvScanner.Row> rows(String text, int start, char delimiter) {
    List<CsvScanner.Row> rows = new ArrayList<>();
    CsvScanner scanner = new CsvScanner(text, start, delimiter);
    CsvScanner.Row row = scanner.next();
    while (row != null) {
      if (!row.blank()) {
        rows.add(row);
      }
      row = scanner.next();
    }
    return rows;
  }

  /** The decimal marks that the numbers of the file show by themselves. */
  private static Set<Character> marks(CsvHeader header, List<CsvScanner.Row> rows) {
    Set<Character> marks = new TreeSet<>();
    for (CsvHeader.Known known : header.columns()) {
      if (known.column().kind().number()) {
        for (CsvScanner.Row row : rows) {
          String amount = CellReader.Amount.of(row.cell(known.index())).number();
          Numeral numeral = Numeral.of(amount);
          if (numeral != null && numeral.mark() != null) {
            marks.add(numeral.mark());
          }
        }
      }
    }
    return marks;
  }

  /** Columns that were not read; one without header counts when it has cells. */
  private static List<String> unknown(CsvHeader header, List<CsvScanner.Row> rows) {
    List<String> unknown = new ArrayList<>();
    for (Map.Entry<Integer, String> column : header.unknown().entrySet()) {
      int index = column.getKey();
      if (!column.getValue().isEmpty()) {
        unknown.add(column.getValue());
      } else if (rows.stream().anyMatch(row -> !row.cell(index).isEmpty())) {
        unknown.add("column " + (index + 1) + ", without header");
      }
    }
    return unknown;
  }
}
