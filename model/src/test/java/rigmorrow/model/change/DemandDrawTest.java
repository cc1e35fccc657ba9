package rigmorrow.model.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.JobBuilder;
import rigmorrow.model.scenario.DemandChange;
import rigmorrow.model.scenario.ScenarioChange;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

class DemandDrawTest {
  private static final LocalDate DATE = LocalDate.parse("2026-03-02");

  /** Twenty samples, each shot on both recipes. */
  private static Batch batch(LocalDate date, Pin... pins) {
    List<ShotJob> jobs = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      jobs.add(new JobBuilder("a" + i).sample("s" + i).recipe("spin").build());
      jobs.add(new JobBuilder("b" + i).sample("s" + i).recipe("stills").build());
    }
    return new Batch(FloorFixtures.floor().build(), new ShotList(date, 1, jobs, List.of(pins)));
  }

  private static List<ShotJob> jobs(Batch batch, ScenarioChange change) {
    ScenarioBatch made = ScenarioMaker.of(batch, List.of(change));
    assertThat(made.problems()).isEmpty();
    return made.batch().shotList().jobs();
  }

  @ParameterizedTest
  @CsvSource({"25, 50", "-25, 30", "100, 80", "250, 140", "-95, 2", "1, 40", "2, 41"})
  void hasSoManyPerCentMore(double percent, int count) {
    List<ShotJob> jobs = jobs(batch(DATE), new DemandChange.MoreJobs(percent, 1));
    assertThat(jobs).hasSize(count).extracting(ShotJob::id).doesNotHaveDuplicates();
  }

  @Test
  void drawsWholeSamplesAndNamesThemAnew() {
    List<ShotJob> jobs = jobs(batch(DATE), new DemandChange.MoreJobs(50, 1));
    Map<String, List<ShotJob>> added =
        jobs.subList(40, 60).stream().collect(Collectors.groupingBy(ShotJob::sample));
    assertThat(added).hasSize(10);
    added.forEach(
        (sample, both) -> {
          assertThat(sample).matches("s\\d+\\+2");
          assertThat(both).extracting(ShotJob::recipe).containsExactly("spin", "stills");
          assertThat(both.get(0).id()).matches("a\\d+\\+2");
        });
    List<ShotJob> fewer = jobs(batch(DATE), new DemandChange.MoreJobs(-50, 1));
    assertThat(fewer.stream().collect(Collectors.groupingBy(ShotJob::sample)).values())
        .allMatch(both -> both.size() == 2);
  }

  @Test
  void aCopyIsTheSameJobOnAnotherSample() {
    List<ShotJob> jobs = jobs(batch(DATE), new DemandChange.MoreJobs(100, 1));
    ShotJob copy = jobs.stream().filter(job -> job.id().equals("a7+2")).findFirst().orElseThrow();
    assertThat(copy)
        .usingRecursiveComparison()
        .ignoringFields("id", "sample")
        .isEqualTo(jobs.get(14));
  }

  @Test
  void theSameSeedDrawsTheSameAndAnotherDayAnother() {
    var more = new DemandChange.MoreJobs(20, 5);
    assertThat(jobs(batch(DATE), more)).isEqualTo(jobs(batch(DATE), more));
    assertThat(jobs(batch(DATE), more))
        .isNotEqualTo(jobs(batch(DATE), new DemandChange.MoreJobs(20, 6)))
        .isNotEqualTo(jobs(batch(DATE.plusDays(1)), more));
  }

  @Test
  void pinnedJobsStay() {
    Pin pin = new Pin("a3", "table", null, null, PinState.PLANNED);
    Pin other = new Pin("b3", "table", null, null, PinState.PLANNED);
    List<ShotJob> jobs = jobs(batch(DATE, pin, other), new DemandChange.MoreJobs(-95, 1));
    assertThat(jobs).extracting(ShotJob::id).containsExactly("a3", "b3");
  }

  @Test
  void anotherMixHasSoManyTimesAsManyOfARecipe() {
    List<ShotJob> jobs =
        jobs(batch(DATE), new DemandChange.Mix(Map.of("spin", 1.5, "stills", 0.25), 1));
    assertThat(jobs).filteredOn(job -> job.recipe().equals("spin")).hasSize(30);
    assertThat(jobs).filteredOn(job -> job.recipe().equals("stills")).hasSize(5);
    assertThat(jobs).extracting(ShotJob::id).doesNotHaveDuplicates();
    assertThat(jobs.stream().filter(job -> job.id().contains("+")))
        .extracting(ShotJob::sample)
        .doesNotHaveDuplicates();
    assertThat(jobs(batch(DATE), new DemandChange.Mix(Map.of("spin", 0.0), 1))).hasSize(20);
  }

  @Test
  void aMixNamesRecipesThatThereAre() {
    var change = new DemandChange.Mix(Map.of("spinn", 2.0), 1);
    assertThat(ScenarioMaker.of(batch(DATE), List.of(change)).problems())
        .containsExactly(
            new ChangeProblem(0, "factors.spinn", "spinn", "recipes", List.of("spin", "stills")));
  }
}
