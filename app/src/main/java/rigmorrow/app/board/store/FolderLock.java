package rigmorrow.app.board.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import rigmorrow.app.files.RefusedException;
import rigmorrow.data.problem.InputProblem;

/**
 * Keeps a folder to one process. The lock ends with the process, however it ends; its file stays,
 * since to delete it would let two others each lock one of their own.
 */
final class FolderLock implements AutoCloseable {
  private static final String NAME = "board.lock";

  private final FileChannel channel;

  private FolderLock(FileChannel channel) {
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
      FileChannel channel =
          FileChannel.open(
              folder.resolve(NAME), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      if (locked(channel)) {
        return new FolderLock(channel);
      }
      channel.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    String value = "a board that is open already, here or in another window";
    String accepted = "one that is closed, or another folder";
    throw new RefusedException(
        folder + ": " + value + "; accepted: " + accepted,
        List.of(new InputProblem(folder.toString(), "folder", "", value, accepted)));
  }

  private static boolean locked(FileChannel channel) throws IOException {
    try {
      FileLock lock = channel.tryLock();
      return lock != null;
    } catch (OverlappingFileLockException held) {
      return false;
    }
  }

  @Override
  public void close() {
    try {
      channel.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
