package rigmorrow.app.runsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/** Which pictures the sheets ask for, with what, and where they are counted. */
class RunSheetPicturesTest {
  private final Batch batch = SampleDay.batch(SampleDay.SUMMER);
  private final Plan plan = SamplePlan.of(batch);
  private final Document page = Jsoup.parse(RunSheetsTest.sheets(batch, plan));

  @Test
  void whoTakesTheItemOffChecksThatAllPicturesAreThere() {
    assertThat(page.select("#operator-2 .entry").eachText())
        .anySatisfy(task -> assertThat(task).contains("Check: 2 rows of 36 and 24 frames."));
    for (int i = 1; i <= 3; i++) {
      for (Element task : page.select("#operator-" + i + " .entry td:nth-of-type(1)")) {
        assertThat(task.text().contains("Check: "))
            .as(task.text())
            .isEqualTo(task.select(".part").eachText().contains("Unload"));
      }
    }
  }

  @Test
  void aJobThatAsksForSomethingElseThanItsRecipeSaysSo() {
    assertThat(page.select("#rig-1 .entry").get(0).text()).doesNotContain("here with");

    Document other =
        Jsoup.parse(
            RunSheetsTest.sheets(withSetup("J1", new Setup(Map.of("background", "grey"))), plan));

    assertThat(other.select("#rig-1 .entry").get(0).text())
        .contains("2 rows of 36 and 24 frames, here with Background: Grey");
  }

  @Test
  void whoStaysDuringCaptureReadsTheSetupThatTheJobHas() {
    assertThat(page.select("#operator-1").text()).contains("Strobe light. Background: Grey.");

    Batch other = withSetup("J2", new Setup(Map.of("background", "white")));

    assertThat(Jsoup.parse(RunSheetsTest.sheets(other, plan)).select("#operator-1").text())
        .contains("Strobe light. Background: White, lit directly.");
  }

  private Batch withSetup(String id, Setup setup) {
    ShotList list = batch.shotList();
    List<ShotJob> jobs =
        list.jobs().stream().map(job -> job.id().equals(id) ? with(job, setup) : job).toList();
    return new Batch(
        batch.floor(), new ShotList(list.date(), list.days(), jobs, list.pins(), list.heldBack()));
  }

  private static ShotJob with(ShotJob job, Setup setup) {
    return new ShotJob(
        job.id(),
        job.article(),
        job.gtin(),
        job.name(),
        job.sample(),
        job.recipe(),
        job.item(),
        setup,
        job.arrivesAt(),
        job.leavesAt(),
        job.promise(),
        job.weight(),
        job.note());
  }
}
