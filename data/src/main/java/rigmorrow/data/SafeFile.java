package rigmorrow.data;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes files whole or not at all. */
public final class SafeFile {
  /** What to do with a file that is there already. */
  public enum Existing {
    /** Leave it alone and refuse to write. */
    KEEP,
    /** Put the new file in its place. */
    REPLACE
  }

  private SafeFile() {}

  /**
   * Writes a text in UTF-8. It is written beside the target and then moved there, so that nobody
   * ever sees half of it and a failure leaves what was there.
   *
   * @throws FileAlreadyExistsException when the file is there and is to be kept
   * @throws IOException when it cannot be written
   */
  public static void write(Path file, String text, Existing existing) throws IOException {
    write(file, text.getBytes(StandardCharsets.UTF_8), existing);
  }

  /**
   * Writes bytes; otherwise like {@link #write(Path, String, Existing)}.
   *
   * @throws FileAlreadyExistsException when the file is there and is to be kept
   * @throws IOException when it cannot be written
   */
  public static void write(Path file, byte[] content, Existing existing) throws IOException {
    Path target = file.toAbsolutePath();
    if (Files.isDirectory(target)) {
      throw new IOException(file + " is a folder");
    }
    if (existing == Existing.KEEP && Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      throw new FileAlreadyExistsException(file.toString(), null, "is there already");
    }
    Path folder = target.getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new IOException(file + " has no folder to stand in");
    }
    // Not a temporary file of the JDK: those are for their owner's eyes only, and so would this be.
    Path draft = folder.resolve("." + UUID.randomUUID() + ".part");
    try {
      Files.write(draft, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      move(draft, target, existing);
    } finally {
      Files.deleteIfExists(draft);
    }
  }

  private static void move(Path draft, Path target, Existing existing) throws IOException {
    if (existing == Existing.KEEP) {
      Files.move(draft, target);
      return;
    }
    try {
      Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
