package rigmorrow.app.board.whatif;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import rigmorrow.app.files.RefusedException;
import rigmorrow.app.whatif.PastDays;
import rigmorrow.app.whatif.WhatIfDemo;
import rigmorrow.data.InputFile;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.solver.whatif.Past;

/** Where a board's past days come from. They are read when somebody asks for them, not before. */
public final class DaySource {
  private final Path folder;
  private final boolean demo;

  private DaySource(Path folder, boolean demo) {
    this.folder = folder;
    this.demo = demo;
  }

  /**
   * A folder with a folder for each day.
   *
   * @throws RefusedException when there is no such folder
   */
  public static DaySource folder(Path folder) {
    if (!Files.isDirectory(folder)) {
      String accepted = "a folder with a folder for each day";
      throw new RefusedException(
          folder + ": there is no such folder; accepted: " + accepted,
          List.of(new InputProblem(folder.toString(), "folder", "", "no folder", accepted)));
    }
    return new DaySource(folder, false);
  }

  /**
   * The demo's invented days and scenarios.
   *
   * @param folder for them alone; made with all of them where it is not there
   */
  public static DaySource demo(Path folder) {
    return new DaySource(folder, true);
  }

  /**
   * Every day, in the order of their names.
   *
   * @throws InputException with everything that is wrong with any of them
   */
  List<Past> days() throws IOException, InputException {
    if (!demo) {
      return PastDays.read(folder, null);
    }
    if (!Files.exists(folder)) {
      // Beside it first: a program that is killed must not leave half of the days there.
      Path part = folder.resolveSibling(folder.getFileName() + ".part");
      new WhatIfDemo(part).write(true);
      Files.move(part, folder);
    }
    return PastDays.read(new WhatIfDemo(folder).days(), null);
  }

  /** Scenarios that come with the days; nothing for a folder of somebody's own. */
  Optional<InputFile> scenarios() throws IOException, InputException {
    Path file = new WhatIfDemo(folder).scenarios();
    return demo
        ? Optional.of(new InputFile("" + file.getFileName(), InputFile.read(file).bytes()))
        : Optional.empty();
  }

  @Override
  public String toString() {
    return folder.toString();
  }
}
