package rigmorrow.app.board.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.files.RefusedException;
import rigmorrow.data.problem.InputProblem;

/**
 * Keeps a folder to one process. The lock ends with the process, however it ends; its file stays,
 * since to delete it would let two others each lock one of their own.
 */
final class FolderLock implements AutoCloseable {
  private static final String NAME = "board.lock";

  /**
   * Folders that this process holds. Closing any channel of a file gives up the process's locks on
   * it, so that the file of a folder held already must not even be opened.
   */
  private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

  private final Path folder;
  private final FileChannel channel;

  private FolderLock(Path folder, FileChannel channel) {
    this.folder = folder;
    this.channel = channel;
  }

  /**
   * Locks a folder, which is made when it is not there.
   *
   * @throws RefusedException when another process has it
   */
  static FolderLock of(Path folder) {
    try {
      Files.createDirectories(folder);
      Path real = folder.toRealPath();
      if (HELD.add(real)) {
        FileChannel channel = locked(real);
        if (channel != null) {
          return new FolderLock(real, channel);
        }
        HELD.remove(real);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    String value = "a board that is open already, here or in another window";
    String accepted = "one that is closed, or another folder";
    throw new RefusedException(
        folder + ": " + value + "; accepted: " + accepted,
        List.of(new InputProblem(folder.toString(), "folder", "", value, accepted)));
  }

  /** A channel with the lock; null when another process has it. */
  private static @Nullable FileChannel locked(Path folder) throws IOException {
    boolean kept = false;
    FileChannel channel = null;
    try {
      channel =
          FileChannel.open(
              folder.resolve(NAME), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      kept = channel.tryLock() != null;
      return kept ? channel : null;
    } catch (IOException | RuntimeException e) {
      HELD.remove(folder);
      throw e;
    } finally {
      if (!kept && channel != null) {
        channel.close();
      }
    }
  }

  @Override
  public void close() {
    try {
      channel.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      HELD.remove(folder);
    }
  }
}
