package rigmorrow.app.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import rigmorrow.data.Formats;
import rigmorrow.data.SafeFile;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.model.shot.ShotList;

/**
 * A file that a shot list is written to; its ending says in which form.
 *
 * @param file where to write
 */
public record ShotListOutput(Path file) {
  private static final List<String> ENDINGS = List.of(".json", ".yaml", ".yml", ".csv");

  /**
   * Looks before any work is done whether the form is known.
   *
   * @throws RefusedException when it is not
   */
  public void refuseOtherEndings() {
    if (ENDINGS.stream().noneMatch(this::endsWith)) {
      throw refused("another ending", "a name that ends in .json, .yaml, .yml or .csv");
    }
  }

  /**
   * Writes a list, in a folder that is made when it is not there.
   *
   * @throws RefusedException when the form cannot keep all of it
   */
  public void write(ShotList list) throws IOException, InputException {
    boolean table = endsWith(".csv");
    if (table && !list.pins().isEmpty()) {
      throw refused("pins, which CSV cannot keep", "a name that ends in .json, .yaml or .yml");
    }
    if (table && !list.heldBack().isEmpty()) {
      throw refused(
          "jobs left out by hand, which CSV cannot keep",
          "a name that ends in .json, .yaml or .yml");
    }
    Path folder = file.toAbsolutePath().getParent();
    if (folder != null) {
      Files.createDirectories(folder);
    }
    if (table) {
      Formats.writeShotTable(list, file, SafeFile.Existing.REPLACE);
    } else {
      Formats.writeShotList(list, file, SafeFile.Existing.REPLACE);
    }
  }

  private boolean endsWith(String ending) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(ending);
  }

  private RefusedException refused(String value, String accepted) {
    return new RefusedException(
        file + ": " + value + "; accepted: " + accepted,
        List.of(new InputProblem(file.toString(), "file", "--out", value, accepted)));
  }
}
