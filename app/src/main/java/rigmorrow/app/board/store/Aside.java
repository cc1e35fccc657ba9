package rigmorrow.app.board.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rigmorrow.app.files.RefusedException;

/** Puts the board of a folder aside, so that another can begin there. Nothing is deleted. */
public final class Aside {
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss", Locale.ROOT);

  /** What the data base has beside its file while it is not closed in order. */
  private static final List<String> COMPANIONS = List.of("-wal", "-shm");

  private static final Logger LOG = LoggerFactory.getLogger(Aside.class);

  private Aside() {}

  /**
   * Gives the board's file a name with a time stamp, and what it has published the same stamp: the
   * crew must not take the old plan for one of the new board.
   *
   * @return the new name of the file; nothing when the folder has no board
   * @throws RefusedException when another process has the board
   * @throws IOException when the file cannot be renamed; then it is where it was
   */
  public static Optional<Path> put(Path folder, LocalDateTime now) throws IOException {
    Path file = folder.resolve(BoardStore.NAME);
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    try (FolderLock lock = FolderLock.of(folder)) {
      String stamp = STAMP.format(now);
      Path aside = free(folder, stamp);
      gather(file);
      for (String companion : COMPANIONS) {
        Path from = folder.resolve(BoardStore.NAME + companion);
        if (Files.exists(from)) {
          Files.move(from, folder.resolve(aside.getFileName() + companion));
        }
      }
      Path published = published(folder, stamp);
      try {
        Files.move(file, aside);
      } catch (IOException e) {
        if (Files.exists(published)) {
          Files.move(published, folder.resolve(PublishedFolder.NAME));
        }
        throw e;
      }
      return Optional.of(aside);
    }
  }

  /** Puts the crew's files aside; where they are then, if there were any. */
  private static Path published(Path folder, String stamp) throws IOException {
    new PublishedFolder(folder, "").recover();
    Path published = folder.resolve(PublishedFolder.NAME);
    Path aside = folder.resolve(PublishedFolder.NAME + "-" + stamp);
    if (Files.exists(published)) {
      Files.move(published, aside);
    }
    return aside;
  }

  /** Takes what a process that was ended left beside the file into it; a damaged file stays so. */
  private static void gather(Path file) {
    try {
      new BoardFile(file).open().close();
    } catch (SQLException | RuntimeException e) {
      LOG.debug("{} is put aside as it is", file, e);
    }
  }

  private static Path free(Path folder, String stamp) throws IOException {
    String[] parts = BoardStore.NAME.split("\\.", 2);
    Path aside = folder.resolve(parts[0] + "-" + stamp + "." + parts[1]);
    if (Files.exists(aside)) {
      throw new FileAlreadyExistsException(aside.toString(), null, "is there already");
    }
    return aside;
  }
}
