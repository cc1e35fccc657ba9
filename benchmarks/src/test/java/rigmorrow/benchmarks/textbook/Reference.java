package rigmorrow.benchmarks.textbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Supplier;
import rigmorrow.model.outside.OutsideCheck;

/**
 * The folder with instance files of the literature, which are not ours to hand out. Checks that
 * need it are skipped, with the reason, where it is not there.
 */
final class Reference {
  private static final String PROPERTY = "rigmorrow.reference";
  private static final String VARIABLE = "RIGMORROW_REFERENCE";
  private static final Path FOLDER = folder();

  /** Reads something from the folder. */
  interface Reading<T> {
    T from(Path file) throws IOException;
  }

  private Reference() {}

  /** The check, skipped where the file or folder it needs is not there. */
  static OutsideCheck needed(String file, OutsideCheck check) {
    return Files.exists(FOLDER.resolve(file))
        ? check
        : check.skippedFor(
            "needs "
                + file
                + " in ../shared/reference, or in the folder that -D"
                + PROPERTY
                + " or "
                + VARIABLE
                + " names");
  }

  /** Reads a file when it is asked for. */
  static <T> Supplier<T> reading(String file, Reading<T> reading) {
    return () -> {
      try {
        return reading.from(FOLDER.resolve(file));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    };
  }

  private static Path folder() {
    String named = System.getProperty(PROPERTY, System.getenv(VARIABLE));
    if (named != null) {
      return Path.of(named);
    }
    Path here = Path.of("").toAbsolutePath();
    Path root = Files.isDirectory(here.resolve("benchmarks")) ? here : here.getParent();
    return root.resolveSibling("shared").resolve("reference").normalize();
  }
}
