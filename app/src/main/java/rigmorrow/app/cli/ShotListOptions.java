package rigmorrow.app.cli;

import java.nio.file.Path;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import rigmorrow.app.cli.options.ReadingOptions;
import rigmorrow.app.files.RefusedException;
import rigmorrow.app.files.ShotListSource;

/** Which floor and shot list to read, and what a table does not say by itself. */
final class ShotListOptions {
  @Parameters(index = "0", paramLabel = "FLOOR", description = "Floor file, YAML or JSON.")
  Path floor;

  @Parameters(
      index = "1",
      paramLabel = "SHOTLIST",
      description = "Shot list: XLSX, CSV, JSON or YAML.")
  Path shotList;

  @Mixin ReadingOptions reading;

  /**
   * What was asked for.
   *
   * @throws RefusedException when the number of days is outside its bounds
   */
  ShotListSource source() {
    return reading.source(floor, shotList);
  }
}
