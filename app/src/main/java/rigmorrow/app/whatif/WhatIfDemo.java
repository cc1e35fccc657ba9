package rigmorrow.app.whatif;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import rigmorrow.app.files.OutputFiles;
import rigmorrow.app.files.RefusedException;
import rigmorrow.data.BatchFolder;
import rigmorrow.data.demo.DemoHistory;
import rigmorrow.data.demo.DemoScenarios;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.scenario.ScenarioWriter;
import rigmorrow.model.shot.Batch;

/** Invented past days and scenarios as files. */
public final class WhatIfDemo {
  private static final int DAYS = 30;
  private static final String DAY_FOLDER = "days";
  private static final String SCENARIOS = "scenarios.yaml";

  private final Path folder;

  /**
   * @param folder to write in
   */
  public WhatIfDemo(Path folder) {
    this.folder = folder;
  }

  /** The scenario file. */
  public Path scenarios() {
    return folder.resolve(SCENARIOS);
  }

  /** The folder of days. */
  public Path days() {
    return folder.resolve(DAY_FOLDER);
  }

  /** Arguments of the command that compares them. */
  public String arguments(Path shown) {
    return shown.resolve(SCENARIOS) + " " + shown.resolve(DAY_FOLDER) + " --out " + shown;
  }

  /**
   * Writes the files; those that are there and the same stay.
   *
   * @return what was written, for people
   */
  public String write(boolean overwrite) throws IOException {
    String text =
        ScenarioWriter.write(
            DemoScenarios.study(), DemoScenarios.INTEREST_PERCENT, Trees.Notation.YAML);
    Path file = scenarios();
    boolean same = Files.isRegularFile(file) && Files.readString(file).equals(text);
    List<Batch> made = DemoHistory.days(DAYS);
    OutputFiles.refuseExisting(List.of(file), overwrite || same);
    if (Files.exists(days()) && !overwrite) {
      refuseOthers(made);
    }
    OutputFiles.write(file, text);
    for (Batch batch : made) {
      BatchFolder.write(days(), batch);
    }
    return SCENARIOS + " and " + DAYS + " past days in " + DAY_FOLDER;
  }

  /** Days that somebody has changed, or that are others, are not written over. */
  private void refuseOthers(List<Batch> made) throws IOException {
    BatchFolder.Reading there = BatchFolder.read(days());
    boolean same =
        there.refused().isEmpty()
            && there.days().stream().map(BatchFolder.Day::batch).toList().equals(made);
    if (!same) {
      String accepted = "--overwrite, or another --out";
      throw new RefusedException(
          days() + ": has days that are not the demo's; accepted: " + accepted,
          List.of(new InputProblem(days().toString(), "folder", "", "other days", accepted)));
    }
  }
}
