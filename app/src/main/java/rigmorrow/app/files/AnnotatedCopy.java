package rigmorrow.app.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.Formats;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.table.TableOptions;

/**
 * A copy of a shot list with its problems beside its rows.
 *
 * @param source the shot list
 * @param options how it is read
 * @param file where to write
 */
public record AnnotatedCopy(Path source, TableOptions options, Path file) {

  /**
   * Looks before any work is done whether such a copy can be made.
   *
   * @throws RefusedException when it cannot
   */
  public void refuseOtherKinds() {
    if (!Formats.isTable(source)) {
      throw refused("not for " + source.getFileName(), "a shot list that is CSV or XLSX");
    }
    boolean workbook = Formats.isWorkbook(source);
    if (!Formats.isTable(file) || Formats.isWorkbook(file) != workbook) {
      throw refused(
          "another ending",
          "a name that ends as the shot list's: " + (workbook ? ".xlsx" : ".csv"));
    }
  }

  /**
   * Writes the copy, if the problems are those of the shot list and it has rows to tell them
   * beside. That it fails must not hide the problems, so nothing is thrown.
   *
   * @return why there is none; null when it was written
   */
  public @Nullable String write(List<InputProblem> problems) {
    if (!problems.get(0).file().equals(source.toString())) {
      return "no annotated copy: the problems are not those of the shot list";
    }
    try {
      OutputFiles.write(file, Formats.annotatedShotTable(source, options, problems));
      return null;
    } catch (InputException e) {
      List<String> reasons = e.problems().stream().map(InputProblem::line).toList();
      return "no annotated copy: " + String.join("; ", reasons);
    } catch (IOException | RuntimeException e) {
      return "no annotated copy, it could not be written: " + e;
    }
  }

  private RefusedException refused(String value, String accepted) {
    return new RefusedException(
        "--annotated: " + value + "; accepted: " + accepted,
        List.of(new InputProblem(file.toString(), "file", "--annotated", value, accepted)));
  }
}
