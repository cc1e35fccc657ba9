package rigmorrow.app.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rigmorrow.data.SafeFile;
import rigmorrow.data.problem.InputProblem;

/** Writes files whole or not at all, and only where nothing of the user's is lost. */
public final class OutputFiles {
  private OutputFiles() {}

  /**
   * Looks before any work is done whether the files may be written.
   *
   * @throws RefusedException with every file that is in the way
   */
  public static void refuseExisting(List<Path> files, boolean overwrite) {
    List<InputProblem> problems = new ArrayList<>();
    Set<Path> asked = new HashSet<>();
    for (Path file : files) {
      if (Files.isDirectory(file)) {
        problems.add(problem(file, "a folder", "the name of a file"));
      } else if (!overwrite && Files.exists(file)) {
        problems.add(problem(file, "is there already", "--overwrite, or another name"));
      }
      Path folder = file.toAbsolutePath().getParent();
      while (folder != null && !Files.exists(folder)) {
        folder = folder.getParent();
      }
      if (folder != null && !Files.isDirectory(folder)) {
        problems.add(problem(file, folder + " is a file", "a folder to write in"));
      } else if (folder != null && asked.add(folder) && !writable(folder)) {
        problems.add(problem(folder, "cannot be written to", "a folder to write in"));
      }
    }
    if (!problems.isEmpty()) {
      List<String> lines = new ArrayList<>();
      lines.add("Nothing was written:");
      problems.forEach(
          problem ->
              lines.add(
                  "  "
                      + problem.file()
                      + ": "
                      + problem.value()
                      + "; accepted: "
                      + problem.accepted()));
      throw new RefusedException(String.join("\n", lines), problems);
    }
  }

  /** Writes a text in UTF-8, in a folder that is made when it is not there. */
  public static void write(Path file, String text) throws IOException {
    write(file, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Writes bytes, in a folder that is made when it is not there. */
  public static void write(Path file, byte[] content) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    if (folder != null) {
      try {
        Files.createDirectories(folder);
      } catch (FileAlreadyExistsException e) {
        throw new IOException(folder + " is a file, not a folder", e);
      }
    }
    SafeFile.write(file, content, SafeFile.Existing.REPLACE);
  }

  /** Asking for permissions is not enough: a superuser has them all, even where nothing fits. */
  private static boolean writable(Path folder) {
    try {
      Files.delete(Files.createTempFile(folder, ".rigmorrow", ".tmp"));
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  private static InputProblem problem(Path file, String value, String accepted) {
    return new InputProblem(file.toString(), "file", "", value, accepted);
  }
}
