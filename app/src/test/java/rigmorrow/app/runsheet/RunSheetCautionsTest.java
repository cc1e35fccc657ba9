package rigmorrow.app.runsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;
import rigmorrow.app.OddItems;
import rigmorrow.app.runsheet.text.JobCautions;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.solver.FloorSolver;

/** What there is to mind stands at every job for which it holds. */
class RunSheetCautionsTest {
  @Test
  void whatToMindWithASetupStandsAtEveryJobAsLongAsItIsSetUp() {
    Batch day = Demo.batch(150, 1, SampleDay.SUMMER);
    Plan made = FloorSolver.dispatch(day);
    String caution = "Mind your head under the frame.";
    RigPlan overhead =
        made.rigs().stream().filter(rig -> rig.rig().equals("R5")).findFirst().orElseThrow();
    Document sheet = RunSheetsTest.read(RunSheetsTest.sheets(day, made));
    Elements entries =
        sheet.selectFirst("section:has(h2:contains(" + overhead.rig() + "))").select(".entry");
    List<String> needFrame =
        day.shotList().jobs().stream()
            .filter(job -> job.item().hanging() != null)
            .map(ShotJob::id)
            .toList();
    int first = 0;
    while (!needFrame.contains(overhead.jobs().get(first).job())) {
      first++;
    }
    // Nothing on this floor ever asks for the frame to be parked again.
    assertThat(entries).hasSizeGreaterThan(first + 1);
    assertThat(overhead.jobs().subList(first, overhead.jobs().size()).stream().map(PlannedJob::job))
        .as("some job there hangs nothing")
        .anyMatch(job -> !needFrame.contains(job));
    assertThat(entries.subList(first, entries.size()))
        .allSatisfy(entry -> assertThat(entry.text()).contains(caution));
  }

  @Test
  void tellsWhatStandsOffItsBaseAndWhatIsMeasuredByHandAtThoseJobsAlone() {
    Batch day = OddItems.batch(SampleDay.SUMMER);
    Document sheet = RunSheetsTest.read(RunSheetsTest.sheets(day, FloorSolver.dispatch(day)));
    assertThat(sheet.select(".entry:contains(Odd lamp OFF)").text())
        .contains(
            "May tip: centre of mass 140 mm off the plate's centre; placed in the middle, its base"
                + " reaches out only 100 mm.")
        .contains("local rules come first");
    assertThat(sheet.select(".entry:contains(Odd lamp HAND)").text())
        .contains("Measure by hand: height.")
        .doesNotContain("May tip");
  }

  @Test
  void asksForAnotherPersonWhereFewerArePlannedThanTheListSays() {
    Batch day = Demo.batch(150, 1, SampleDay.SUMMER);
    Document sheet = RunSheetsTest.read(RunSheetsTest.sheets(day, FloorSolver.dispatch(day)));
    String caution = "Needs 3 people by the list; 2 are planned, since its holder counts as one.";
    Elements mirrors = sheet.select("section[id^=rig] .entry:contains(floor mirror)");
    assertThat(mirrors)
        .as("three hands and a holder")
        .isNotEmpty()
        .allSatisfy(entry -> assertThat(entry.select(".cautions").text()).contains(caution));
    assertThat(sheet.select("section[id^=operator] :contains(" + caution + ")")).isNotEmpty();
  }

  @Test
  void claimsNothingAboutABaseThatIsNotKnown() {
    Batch day = Demo.batch(12, 1, SampleDay.SUMMER);
    ShotJob job = OddItems.unmeasured(day.floor().recipes().get(0).id());
    Rig rig = day.floor().rigs().get(0);
    assertThat(new JobCautions(day.floor()).of(job, rig, Setup.ANY))
        .contains("Size or mass is not known: measure and weigh before placing it.")
        .noneMatch(caution -> caution.contains("base"));
  }
}
