package rigmorrow.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.cli.Runner.Ran;
import rigmorrow.app.report.Durations;
import rigmorrow.data.Formats;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;

/** A length of time is the same figure wherever a person reads it. */
class OneFigureTest {
  @TempDir Path folder;

  @Test
  void tellsLatenessAndChangeoversAlikeInPlanSheetsAndExplanation() throws Exception {
    String[] demo = {"demo", "--write-only", "--jobs", "150", "--out", "in"};
    assertThat(Runner.run(folder, demo).exitCode()).isZero();
    String list = "in/shot-list.csv";
    Ran planned = Runner.run(folder, "plan", "in/floor.yaml", list, "--first-only", "--out", "out");
    Plan plan = Formats.readPlan(folder.resolve("out/plan.json"));
    String sheets = Files.readString(folder.resolve("out/run-sheets.html")).replace('\u00a0', ' ');
    PlannedJob late =
        plan.rigs().stream()
            .flatMap(rig -> rig.jobs().stream())
            .filter(job -> job.lateSeconds() % 60 != 0)
            .findFirst()
            .orElseThrow();
    String figure = Durations.late(late.lateSeconds());
    assertThat(planned.out()).contains(figure + " late");
    assertThat(sheets).contains("LATE by " + figure).contains("<strong>" + figure);
    assertThat(
            Runner.run(
                    folder, "explain", "in/floor.yaml", list, "out/plan.json", "--job", late.job())
                .out())
        .contains(figure + " late");
    String changeovers = Durations.of(plan.figures().changeoverSeconds());
    assertThat(plan.figures().changeoverSeconds() % 60).as("something to round").isPositive();
    assertThat(planned.out().replaceAll("\\s+", " ")).contains("changeovers " + changeovers);
    assertThat(sheets).contains(changeovers);
  }
}
