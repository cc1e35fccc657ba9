package rigmorrow.benchmarks.instance;

import java.nio.file.Files;
import java.nio.file.Path;

/** Finds the module's files: tests run in its folder, or in the project's from an editor. */
public final class Project {
  private Project() {}

  /** A file or folder of the benchmarks module. */
  public static Path folder(String name) {
    Path here = Path.of("").toAbsolutePath();
    Path root = Files.isDirectory(here.resolve("benchmarks")) ? here : here.getParent();
    return root.resolve("benchmarks").resolve(name);
  }
}
