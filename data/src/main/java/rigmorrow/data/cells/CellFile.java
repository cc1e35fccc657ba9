package rigmorrow.data.cells;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
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
  private static final String BEING_WRITTEN = "another run is writing to it";

  /** More than any first line has; what is longer is something else. */
  private static final int LONGEST_HEAD = 10_000;

  /**
   * Files that this process has open. A lock is the process's and not the channel's: to close any
   * second channel of such a file would give it up. So it is looked up here before a channel is
   * opened, and whoever opens or closes one holds this.
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
   * @throws InputException when the file is of another run, or is none, or has lines that are no
   *     cells, which {@link #mend} takes out, or is being written to
   * @throws IOException when the file system fails
   */
  public static CellFile open(Path file, RunHead head) throws IOException, InputException {
    CellFile cells = locked(file);
    boolean open = false;
    try {
      cells.begin(head);
      open = true;
      return cells;
    } finally {
      if (!open) {
        cells.close();
      }
    }
  }

  private static CellFile locked(Path file) throws IOException, InputException {
    synchronized (OPEN) {
      Path place = place(file);
      if (OPEN.contains(place)) {
        throw new InputException(List.of(beingWritten(file)));
      }
      FileChannel channel =
          FileChannel.open(
              file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
      boolean ours = false;
      try {
        CellFile cells = new CellFile(file, place, channel);
        cells.lock();
        ours = OPEN.add(place);
        return cells;
      } finally {
        if (!ours) {
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
   * The cells of a file, which nobody may write to meanwhile; nothing is changed, and what is
   * damaged is left where it is.
   *
   * @param head of a run that they are to be compared with
   * @throws InputException when the file is of another run, or is none
   * @throws IOException when the file system fails, or this process is writing to the file
   */
  public static KeptCells read(Path file, RunHead head) throws IOException, InputException {
    synchronized (OPEN) {
      Path place = place(file);
      if (OPEN.contains(place)) {
        throw new FileSystemException(file.toString(), null, BEING_WRITTEN);
      }
      try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
        CellText text = CellText.of(file, ended(bytes(channel)), head);
        return new KeptCells(text.cells(), text.problems().size());
      }
    }
  }

  /**
   * Takes the lines that are no cells out of a file, and keeps a copy of the file as it was beside
   * it.
   *
   * @param file that is there
   * @param head of this run
   * @return what was done; nothing where every line is a cell
   * @throws InputException when the file is of another run, or is none, or is being written to
   * @throws IOException when the file system fails
   */
  public static Optional<Mended> mend(Path file, RunHead head) throws IOException, InputException {
    try (CellFile cells = locked(file)) {
      byte[] before = bytes(cells.channel);
      CellText text = CellText.of(file, ended(before), head);
      if (text.problems().isEmpty()) {
        return Optional.empty();
      }
      Path copy = besides(file);
      try (FileChannel whole =
          FileChannel.open(copy, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
        write(whole, before); // First: whatever ends the program from here on, nothing is gone.
      }
      byte[] good = text.good().getBytes(StandardCharsets.UTF_8);
      int same = sameLines(before, good);
      cells.channel.truncate(same);
      cells.channel.force(true); // Before any more: no line may be half of one and half of another.
      cells.channel.position(same);
      write(cells.channel, Arrays.copyOfRange(good, same, good.length));
      return Optional.of(new Mended(file, copy, text.problems().size(), text.lines()));
    }
  }

  /** A name beside a damaged file that nothing has yet, to put it or a copy of it there. */
  public static Path besides(Path file) {
    String name = ("" + file.getFileName()).replaceFirst("\\.csv$", "");
    for (int number = 1; ; number++) {
      Path aside = file.resolveSibling(name + ".damaged-" + number + ".csv");
      if (!Files.exists(aside, LinkOption.NOFOLLOW_LINKS)) {
        return aside;
      }
    }
  }

  /**
   * What the cells of a file have in common, whatever program has written them.
   *
   * @return nothing where it is no file of cells
   * @throws IOException when the file system fails
   */
  public static Optional<RunHead> head(Path file) throws IOException {
    synchronized (OPEN) {
      if (OPEN.contains(place(file))) {
        throw new FileSystemException(file.toString(), null, BEING_WRITTEN);
      }
      try (InputStream in = Files.newInputStream(file)) {
        String start = new String(in.readNBytes(LONGEST_HEAD), StandardCharsets.UTF_8);
        Optional<String> first = start.lines().findFirst();
        return first.isPresent() ? CellText.head(first.get()) : Optional.empty();
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
      write(channel, CellText.line(cell).getBytes(StandardCharsets.UTF_8));
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

  private void begin(RunHead head) throws IOException, InputException {
    byte[] bytes = bytes(channel);
    CellText text = CellText.of(file, ended(bytes), head);
    if (!text.problems().isEmpty()) {
      throw new InputException(text.problems());
    }
    channel.truncate(text.begun() ? end(bytes) : 0);
    channel.position(channel.size());
    if (!text.begun()) {
      write(channel, CellText.heads(head).getBytes(StandardCharsets.UTF_8));
    }
    cells.addAll(text.cells());
  }

  /**
   * All that is there. It is read through the channel: to open and close the file once more would
   * give up the lock, which is the process's and not the channel's.
   */
  private static byte[] bytes(FileChannel channel) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(Math.toIntExact(channel.size()));
    channel.position(0);
    while (bytes.hasRemaining() && channel.read(bytes) >= 0) {
      // until all is there
    }
    return Arrays.copyOf(bytes.array(), bytes.position());
  }

  /** Every line that has its end. */
  private static String ended(byte[] bytes) {
    return new String(bytes, 0, end(bytes), StandardCharsets.UTF_8);
  }

  /** Where the last line that has its end ends. */
  private static int end(byte[] bytes) {
    int end = bytes.length;
    while (end > 0 && bytes[end - 1] != '\n') {
      end--;
    }
    return end;
  }

  /** How many bytes the whole lines have with which both begin. */
  static int sameLines(byte[] one, byte[] other) {
    int differs = Arrays.mismatch(one, other);
    return end(Arrays.copyOf(one, differs < 0 ? one.length : differs));
  }

  private static void write(FileChannel channel, byte[] content) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(content);
    while (bytes.hasRemaining()) {
      channel.write(bytes);
    }
    channel.force(true);
  }

  private static InputProblem beingWritten(Path file) {
    return new InputProblem(file.toString(), "file", "", BEING_WRITTEN, "wait for its end");
  }
}
