package rigmorrow.data.cells;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;

/**
 * Cells as CSV: a line that says what they have in common, a line of heads, then a line for each
 * cell, which is on the disk before anything else is done. So a run that ends anyhow keeps every
 * finished cell, and any later one finds it by what its plan rests on. Nobody else can write to the
 * file meanwhile.
 */
public final class CellFile implements AutoCloseable {
  private static final String FIRST = "rigmorrow cells";
  private static final String VERSION = "2";
  private static final int HEAD_ROWS = 2;
  private static final String BEING_WRITTEN = "another run is writing to it";

  private static final CsvMapper MAPPER =
      CsvMapper.builder().enable(CsvParser.Feature.WRAP_AS_ARRAY).build();
  private static final ObjectWriter WRITER =
      MAPPER.writer(CsvSchema.emptySchema().withLineSeparator("\n"));

  /**
   * Files that this process has open. A lock is the process's and not the channel's: to close any
   * second channel of such a file would give it up. So it is looked up here before a channel is
   * opened, and whoever opens, reads or closes one holds this.
   */
  private static final Set<Path> OPEN = new HashSet<>();

  private final Path file;
  private final Path place;
  private final FileChannel channel;
  private final List<KeptCell> cells = new ArrayList<>();

  private CellFile(Path file, Path place, FileChannel channel) {
    this.file = file;
    this.place = place;
    this.channel = channel;
  }

  /**
   * Opens a file, or begins it. A last line without an end was cut off while it was written: it is
   * taken out of the file.
   *
   * @param file in a folder that is there
   * @param head of this run
   * @throws InputException when the file is of another run, or is none, or is being written to
   * @throws IOException when the file system fails
   */
  public static CellFile open(Path file, RunHead head) throws IOException, InputException {
    synchronized (OPEN) {
      Path place = place(file);
      if (OPEN.contains(place)) {
        throw new InputException(List.of(beingWritten(file)));
      }
      FileChannel channel =
          FileChannel.open(
              file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
      boolean open = false;
      try {
        CellFile cells = new CellFile(file, place, channel);
        cells.lock();
        cells.read(head);
        open = OPEN.add(place);
        return cells;
      } finally {
        if (!open) {
          channel.close();
        }
      }
    }
  }

  /** The file under its only name, whether or not it is there and whatever leads to it. */
  private static Path place(Path file) throws IOException {
    Path whole = file.toAbsolutePath();
    Path parent = whole.getParent();
    return Files.exists(whole) || parent == null
        ? whole.toRealPath()
        : parent.toRealPath().resolve("" + whole.getFileName());
  }

  /**
   * The cells of a file, which nobody may write to meanwhile; nothing is changed, and a last line
   * that was cut off is left where it is.
   *
   * @param head of a run that they are to be compared with
   * @throws InputException when the file is of another run, or is none
   * @throws IOException when the file system fails, or this process is writing to the file
   */
  public static List<KeptCell> read(Path file, RunHead head) throws IOException, InputException {
    synchronized (OPEN) {
      Path place = place(file);
      if (OPEN.contains(place)) {
        throw new FileSystemException(file.toString(), null, BEING_WRITTEN);
      }
      try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
        CellFile cells = new CellFile(file, place, channel);
        List<List<String>> rows = cells.checked(cells.whole(), head);
        if (rows.size() >= HEAD_ROWS) {
          cells.take(rows.subList(HEAD_ROWS, rows.size()));
        }
        return cells.cells();
      }
    }
  }

  /** The cells that were there when the file was opened, each once. */
  public List<KeptCell> cells() {
    return List.copyOf(cells);
  }

  /**
   * Adds a cell; it is on the disk when this returns.
   *
   * @throws UncheckedIOException when it cannot be written
   */
  public void append(KeptCell cell) {
    try {
      write(line(CellRow.of(cell)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() throws IOException {
    synchronized (OPEN) {
      if (channel.isOpen()) { // Closed already, the file may be somebody else's by now.
        OPEN.remove(place);
        channel.close();
      }
    }
  }

  private void lock() throws IOException, InputException {
    boolean ours;
    try {
      ours = channel.tryLock() != null;
    } catch (OverlappingFileLockException e) {
      ours = false;
    }
    if (!ours) {
      throw new InputException(List.of(beingWritten(file)));
    }
  }

  private void read(RunHead head) throws IOException, InputException {
    String whole = whole();
    channel.truncate(whole.getBytes(StandardCharsets.UTF_8).length);
    channel.position(channel.size());
    List<List<String>> rows = checked(whole, head);
    if (rows.size() < HEAD_ROWS) {
      channel.truncate(0);
      List<String> first = new ArrayList<>(List.of(FIRST, VERSION));
      first.addAll(head.row());
      write(line(first) + line(CellRow.HEADS));
    } else {
      take(rows.subList(HEAD_ROWS, rows.size()));
    }
  }

  /**
   * Every line that has its end. It is read through the channel: to open and close the file once
   * more would give up the lock, which is the process's and not the channel's.
   */
  private String whole() throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(Math.toIntExact(channel.size()));
    channel.position(0);
    while (bytes.hasRemaining() && channel.read(bytes) >= 0) {
      // until all is there
    }
    String text = new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8);
    return text.substring(0, text.lastIndexOf('\n') + 1);
  }

  private List<List<String>> checked(String whole, RunHead head)
      throws IOException, InputException {
    List<List<String>> rows = rows(whole);
    if (!rows.isEmpty()) {
      check(rows.get(0), head);
    }
    if (rows.size() >= HEAD_ROWS && !rows.get(1).equals(CellRow.HEADS)) {
      throw refused(2, "", String.join(",", rows.get(1)), "the heads of this version");
    }
    return rows;
  }

  private List<List<String>> rows(String text) throws IOException, InputException {
    List<List<String>> rows = new ArrayList<>();
    try (MappingIterator<String[]> lines = MAPPER.readerFor(String[].class).readValues(text)) {
      while (lines.hasNext()) {
        rows.add(List.of(lines.next()));
      }
    } catch (JsonProcessingException e) {
      throw refused(rows.size() + 1, "", "" + e.getOriginalMessage(), "rows of CSV");
    }
    return rows;
  }

  private void check(List<String> first, RunHead head) throws InputException {
    List<String> ours = head.row();
    boolean cells = first.size() >= 2 && first.get(0).equals(FIRST);
    if (cells && !first.get(1).equals(VERSION)) {
      throw refused(1, "version", first.get(1), VERSION + "; or another --out");
    }
    if (!cells || first.size() != ours.size() + 2) {
      throw refused(1, "", String.join(",", first), "a file of cells, or none; or another --out");
    }
    List<InputProblem> problems = new ArrayList<>();
    for (int i = 0; i < ours.size(); i += 2) {
      String theirs = first.get(i + 3);
      if (!theirs.equals(ours.get(i + 1))) {
        String accepted =
            "as in this run: "
                + ours.get(i + 1)
                + "; cells of different "
                + ours.get(i)
                + " are not to be compared, so go on with another --out";
        problems.add(problem(1, ours.get(i), theirs, accepted));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  private void take(List<List<String>> rows) throws InputException {
    Map<String, KeptCell> byPlan = new LinkedHashMap<>();
    List<InputProblem> problems = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      try {
        KeptCell cell = CellRow.cell(rows.get(i));
        byPlan.putIfAbsent(cell.plan(), cell);
      } catch (IllegalArgumentException e) {
        String value = String.join(",", rows.get(i));
        problems.add(problem(i + HEAD_ROWS + 1, "", value, "a cell: " + e.getMessage()));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    cells.addAll(byPlan.values());
  }

  private void write(String text) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
    while (bytes.hasRemaining()) {
      channel.write(bytes);
    }
    channel.force(true);
  }

  private static String line(List<String> cells) throws IOException {
    return WRITER.writeValueAsString(cells);
  }

  private static InputProblem beingWritten(Path file) {
    String accepted = "another --out, or wait for its end";
    return new InputProblem(file.toString(), "file", "", BEING_WRITTEN, accepted);
  }

  private InputException refused(int row, String field, String value, String accepted) {
    return new InputException(List.of(problem(row, field, value, accepted)));
  }

  private InputProblem problem(int row, String field, String value, String accepted) {
    return new InputProblem(file.toString(), "row " + row, field, value, accepted);
  }
}
