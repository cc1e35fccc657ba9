package rigmorrow.app.cli;

import java.nio.file.Path;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** A floor, a shot list and a plan made of them. */
final class PlanFileOptions {
  @Mixin ShotListOptions files;

  @Parameters(
      index = "2",
      paramLabel = "PLAN",
      description = "Plan, as written by the plan command.")
  Path plan;
}
