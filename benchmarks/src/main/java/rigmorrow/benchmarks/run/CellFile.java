package rigmorrow.benchmarks.run;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;

/**
 * The results of a run as CSV, a line for each cell, appended as it ends. So a run that is
 * interrupted keeps what it has.
 */
public final class CellFile {
  /** Name of the file in a run's folder. */
  public static final String NAME = "cells.csv";

  private static final CsvMapper MAPPER =
      CsvMapper.builder().enable(CsvParser.Feature.WRAP_AS_ARRAY).build();
  private static final ObjectWriter WRITER =
      MAPPER.writer(CsvSchema.emptySchema().withLineSeparator("\n"));

  private final Path file;

  /**
   * @param folder of the run; there already
   */
  public CellFile(Path folder) {
    this.file = folder.resolve(NAME);
  }

  /**
   * Every finished cell; none when there is no file yet. A last line without an end was cut off
   * while it was written: it is taken out of the file.
   *
   * @throws InputException when another line is no cell, or the heads are others
   * @throws IOException when the file system fails
   */
  public List<Cell> read() throws IOException, InputException {
    if (!Files.exists(file)) {
      return List.of();
    }
    String text = Files.readString(file);
    String whole = text.substring(0, text.lastIndexOf('\n') + 1);
    if (whole.length() < text.length()) {
      Files.writeString(file, whole);
    }
    List<List<String>> rows = new ArrayList<>();
    try (MappingIterator<String[]> lines = MAPPER.readerFor(String[].class).readValues(whole)) {
      while (lines.hasNext()) {
        rows.add(List.of(lines.next()));
      }
    }
    return cells(rows);
  }

  private List<Cell> cells(List<List<String>> rows) throws InputException {
    if (rows.isEmpty()) {
      return List.of();
    }
    if (!rows.get(0).equals(Cell.HEADS)) {
      throw refusal(1, String.join(",", rows.get(0)), "the heads of this version");
    }
    List<Cell> cells = new ArrayList<>();
    List<InputProblem> problems = new ArrayList<>();
    for (int row = 1; row < rows.size(); row++) {
      try {
        cells.add(Cell.of(rows.get(row)));
      } catch (IllegalArgumentException e) {
        problems.add(
            problem(row + 1, String.join(",", rows.get(row)), "a cell: " + e.getMessage()));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return cells;
  }

  /**
   * Adds a cell at the end.
   *
   * @throws IOException when it cannot be written
   */
  public void append(Cell cell) throws IOException {
    StringBuilder text = new StringBuilder();
    if (!Files.exists(file) || Files.size(file) == 0) {
      text.append(line(Cell.HEADS));
    }
    text.append(line(cell.row()));
    Files.write(
        file,
        text.toString().getBytes(StandardCharsets.UTF_8),
        StandardOpenOption.CREATE,
        StandardOpenOption.APPEND);
  }

  /** A problem with a row. */
  InputException refusal(int row, String value, String accepted) {
    return new InputException(List.of(problem(row, value, accepted)));
  }

  private InputProblem problem(int row, String value, String accepted) {
    return new InputProblem(file.toString(), "row " + row, "", value, accepted);
  }

  private static String line(List<String> cells) throws IOException {
    return WRITER.writeValueAsString(cells);
  }
}
