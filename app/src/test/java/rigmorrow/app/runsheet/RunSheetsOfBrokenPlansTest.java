package rigmorrow.app.runsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import rigmorrow.app.print.Paper;
import rigmorrow.app.report.JobBreaches;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.verify.PlanChecker;

/** Nobody may take the run sheets of a plan that breaks rules for good ones. */
class RunSheetsOfBrokenPlansTest {
  private static final PlanStamp STAMP =
      new PlanStamp(
          "Version 3 of the board, not published, put by 2026-03-18 17:02", "before lunch");

  private final Batch batch = SampleDay.batch(SampleDay.SUMMER);
  private final Plan plan = SamplePlan.of(batch);
  private final String html = RunSheetsTest.sheets(batch, plan);
  private final Document page = RunSheetsTest.read(html);

  @Test
  void everySheetOfAPlanThatBreaksRulesForbidsToWorkFromIt() {
    List<Breach> breaches = PlanChecker.check(batch, plan);
    assertThat(breaches).isNotEmpty();

    Document broken =
        RunSheetsTest.read(new RunSheets(batch, plan, STAMP, Paper.A4, SheetChoice.ALL).html());

    String warning = "This plan breaks " + breaches.size() + " rules. Do not work from it.";
    assertThat(broken.select("section.sheet"))
        .hasSize(7)
        .allMatch(sheet -> sheet.select("> .warning").text().equals(warning));
    assertThat(broken.select(".broken li").eachText())
        .startsWith(breaches.get(0).sentence())
        .hasSize(Math.min(31, breaches.size()));
    assertThat(page.select(".breach, .broken")).isEmpty();
  }

  @Test
  void marksTheJobThatBreaksARuleOnItsRowsOnly() {
    Breach breach = new Breach(FloorRule.JOB_ORDER, "J3", 1, "Capture of J3 starts too early.");
    Breach shared =
        new Breach(FloorRule.OPERATOR_ONE_TASK, "ben", 1, "Ben does J3 and J4 at once.");

    Document marked =
        RunSheetsTest.read(RunSheetsTest.sheets(batch, plan, List.of(breach, shared)).html());

    assertThat(marked.select("#rig-2 .entry").get(0).select(".breach").eachText())
        .containsExactly(
            "Breaks a rule: Capture of J3 starts too early.",
            "Breaks a rule: Ben does J3 and J4 at once.");
    assertThat(marked.select("#rig-2 .entry").get(1).select(".breach").eachText())
        .containsExactly("Breaks a rule: Ben does J3 and J4 at once.");
    assertThat(marked.select("#rig-1 .breach")).isEmpty();
    assertThat(marked.select("#operator-2 .breach")).isNotEmpty();
  }

  @Test
  void listsThirtyBreachesAndCountsTheRest() {
    Breach breach = new Breach(FloorRule.JOB_ORDER, "J12", 1, "Capture of J12 starts at 09:10.");
    JobBreaches many = new JobBreaches(Collections.nCopies(32, breach));

    assertThat(many.sentences()).hasSize(31).endsWith("and 2 more");
    assertThat(many.of("J1")).isEmpty();
    assertThat(many.of("10")).isEmpty();
    assertThat(many.of("J12")).hasSize(1);
  }

  @Test
  void worksLatenessOutFromThePromiseNotFromThePlansClaim() {
    List<RigPlan> rigs =
        plan.rigs().stream()
            .map(
                rig ->
                    new RigPlan(
                        rig.rig(),
                        rig.jobs().stream().map(RunSheetsOfBrokenPlansTest::claimedLate).toList()))
            .toList();
    Plan claimed =
        new Plan(
            plan.floor(),
            plan.zone(),
            plan.date(),
            plan.days(),
            rigs,
            plan.leftOut(),
            new PlanFigures(0, 0, 0, 0, 0, 99, 99, 99, 0, 0, 0),
            plan.origin());

    assertThat(RunSheetsTest.sheets(batch, claimed)).isEqualTo(html);
  }

  private static PlannedJob claimedLate(PlannedJob job) {
    return new PlannedJob(
        job.job(),
        job.steps(),
        job.changeover(),
        job.warmedUpAt(),
        job.load(),
        job.capture(),
        job.captureOperators(),
        job.unload(),
        job.kit(),
        job.lateSeconds() + 5000);
  }
}
