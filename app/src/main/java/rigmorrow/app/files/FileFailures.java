package rigmorrow.app.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/** What a file system says when it refuses something, in words for the user. */
public final class FileFailures {
  private FileFailures() {}

  /** The file that it is about; empty when nobody knows. */
  public static String file(IOException failure) {
    String file = failure instanceof FileSystemException known ? known.getFile() : null;
    return file == null ? "" : file;
  }

  /** Why it was refused, without a full stop. */
  public static String reason(IOException failure) {
    if (failure instanceof NoSuchFileException) {
      return "there is no such file or folder";
    }
    if (failure instanceof AccessDeniedException) {
      return "no permission to use it";
    }
    if (failure instanceof NotDirectoryException) {
      return "this is a file, not a folder";
    }
    String message =
        failure instanceof FileSystemException known ? known.getReason() : failure.getMessage();
    return message == null ? failure.getClass().getSimpleName() : message;
  }

  /** File and reason in one sentence. */
  public static String sentence(IOException failure) {
    String file = file(failure);
    return (file.isEmpty() ? "A file cannot be used" : file) + ": " + reason(failure) + ".";
  }
}
