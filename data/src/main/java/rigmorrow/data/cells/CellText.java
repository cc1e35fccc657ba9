package rigmorrow.data.cells;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;

/** What stands in a file of cells: the lines that are cells, and what is wrong with the others. */
final class CellText {
  private static final String FIRST = "rigmorrow cells";
  private static final String VERSION = "3";
  private static final int HEAD_LINES = 2;

  private static final CsvMapper MAPPER =
      CsvMapper.builder().enable(CsvParser.Feature.WRAP_AS_ARRAY).build();
  private static final ObjectWriter WRITER =
      MAPPER.writer(CsvSchema.emptySchema().withLineSeparator("\n"));

  private final Path file;
  private final boolean begun;
  private final StringBuilder good = new StringBuilder();
  private final Map<String, KeptCell> byPlan = new LinkedHashMap<>();
  private final List<InputProblem> problems = new ArrayList<>();
  private int lines;

  private CellText(Path file, boolean begun) {
    this.file = file;
    this.begun = begun;
  }

  /**
   * Reads a text.
   *
   * @param file that it is from
   * @param text every line of which has its end
   * @param head of a run that its cells are to be compared with
   * @throws InputException when it is of another run, or of something else
   */
  static CellText of(Path file, String text, RunHead head) throws IOException, InputException {
    List<String> heads = text.lines().limit(HEAD_LINES).toList();
    CellText read = new CellText(file, heads.size() == HEAD_LINES);
    if (!heads.isEmpty()) {
      read.check(read.head(1, heads.get(0)), head);
    }
    if (read.begun) {
      if (!read.head(2, heads.get(1)).equals(CellRow.HEADS)) {
        throw read.refused(2, heads.get(1), "the heads of this version");
      }
      int end = text.indexOf('\n', text.indexOf('\n') + 1) + 1;
      read.good.append(text, 0, end);
      read.take(text.substring(end));
    }
    return read;
  }

  /** What the cells of a file have in common, of whatever version; nothing where it has none. */
  static Optional<RunHead> head(String first) throws IOException {
    List<List<String>> rows;
    try {
      rows = rows(first);
    } catch (JsonProcessingException e) {
      return Optional.empty();
    }
    if (rows.isEmpty() || !rows.get(0).get(0).equals(FIRST)) {
      return Optional.empty();
    }
    List<String> row = rows.get(0);
    Map<String, String> values = new LinkedHashMap<>();
    for (int i = 2; i + 1 < row.size(); i += 2) {
      values.put(row.get(i), row.get(i + 1));
    }
    return Optional.of(
        new RunHead(
            values.getOrDefault("program", ""),
            values.getOrDefault("build", ""),
            values.getOrDefault("effort", "")));
  }

  /** The first lines of a file. */
  static String heads(RunHead head) throws IOException {
    List<String> first = new ArrayList<>(List.of(FIRST, VERSION));
    first.addAll(head.row());
    return line(first) + line(CellRow.HEADS);
  }

  /** The line of a cell, with its end. */
  static String line(KeptCell cell) throws IOException {
    return line(CellRow.of(cell));
  }

  private static String line(List<String> cells) throws IOException {
    return WRITER.writeValueAsString(cells);
  }

  /** True where it has all the lines that come before the cells. */
  boolean begun() {
    return begun;
  }

  /** The cells, each plan once. */
  List<KeptCell> cells() {
    return List.copyOf(byPlan.values());
  }

  /** One for each line that is no cell. */
  List<InputProblem> problems() {
    return List.copyOf(problems);
  }

  /** How many lines there are in which cells are looked for. */
  int lines() {
    return lines;
  }

  /** The text without the lines that are no cells. */
  String good() {
    return good.toString();
  }

  private void take(String text) throws IOException {
    if (!takenWhole(text)) {
      byPlan.clear();
      lines = 0;
      // A quotation mark too many makes one row of all lines up to the next: each by itself.
      for (String line : text.split("\n")) {
        takeLine(line);
      }
    }
  }

  private boolean takenWhole(String text) throws IOException {
    try {
      for (List<String> row : rows(text)) {
        take(CellRow.cell(row));
      }
    } catch (JsonProcessingException | IllegalArgumentException e) {
      return false;
    }
    good.append(text);
    return true;
  }

  private void takeLine(String line) throws IOException {
    try {
      List<List<String>> rows = rows(line);
      if (rows.size() != 1) {
        throw new IllegalArgumentException(rows.size() + " rows in place of 1");
      }
      take(CellRow.cell(rows.get(0)));
      good.append(line).append('\n');
    } catch (JsonProcessingException e) {
      lines++;
      problems.add(problem("" + e.getOriginalMessage(), "a row of CSV"));
    } catch (IllegalArgumentException e) {
      lines++;
      problems.add(problem(line, "a cell: " + e.getMessage()));
    }
  }

  private void take(KeptCell cell) {
    lines++;
    byPlan.putIfAbsent(cell.plan(), cell);
  }

  private static List<List<String>> rows(String text) throws IOException {
    List<List<String>> rows = new ArrayList<>();
    try (MappingIterator<String[]> lines = MAPPER.readerFor(String[].class).readValues(text)) {
      while (lines.hasNextValue()) {
        rows.add(List.of(lines.nextValue()));
      }
    }
    return rows;
  }

  private List<String> head(int row, String line) throws IOException, InputException {
    try {
      List<List<String>> rows = rows(line);
      return rows.isEmpty() ? List.of("") : rows.get(0);
    } catch (JsonProcessingException e) {
      throw refused(row, "" + e.getOriginalMessage(), "rows of CSV");
    }
  }

  private void check(List<String> first, RunHead head) throws InputException {
    List<String> ours = head.row();
    boolean cells = first.size() >= 2 && first.get(0).equals(FIRST);
    if (cells && !first.get(1).equals(VERSION)) {
      throw new InputException(List.of(problem(1, "version", first.get(1), VERSION)));
    }
    if (!cells || first.size() != ours.size() + 2) {
      throw refused(1, String.join(",", first), "a file of cells, or none");
    }
    List<InputProblem> others = new ArrayList<>();
    for (int i = 0; i < ours.size(); i += 2) {
      String theirs = first.get(i + 3);
      if (!theirs.equals(ours.get(i + 1))) {
        String accepted =
            "as in this run: "
                + ours.get(i + 1)
                + "; cells of different "
                + ours.get(i)
                + " are not to be compared";
        others.add(problem(1, ours.get(i), theirs, accepted));
      }
    }
    if (!others.isEmpty()) {
      throw new InputException(others);
    }
  }

  private InputException refused(int row, String value, String accepted) {
    return new InputException(List.of(problem(row, "", value, accepted)));
  }

  private InputProblem problem(String value, String accepted) {
    return problem(HEAD_LINES + lines, "", value, accepted);
  }

  private InputProblem problem(int row, String field, String value, String accepted) {
    return new InputProblem(file.toString(), "row " + row, field, value, accepted);
  }
}
