package rigmorrow.data.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Gtin;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

class DemoShotListTest {
  private final ShotList demo = Demo.batch().shotList();

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 77})
  void isTheSameForTheSameSeed(long seed) {
    assertThat(DemoShotList.of(150, seed, DemoKnobs.DATE))
        .isEqualTo(DemoShotList.of(150, seed, DemoKnobs.DATE));
  }

  @Test
  void isAnotherForAnotherSeed() {
    assertThat(DemoShotList.of(150, 2, DemoKnobs.DATE).jobs()).isNotEqualTo(demo.jobs());
  }

  @ParameterizedTest
  @CsvSource({"1,1,6,1", "30,1,6,1", "150,1,6,1", "400,1,10,2", "2000,1,12,8"})
  void comesWithAFloorOfItsSize(int jobs, long seed, int rigs, int days) {
    Batch batch = Demo.batch(jobs, seed, DemoKnobs.DATE);

    assertThat(batch.shotList().jobs()).hasSize(jobs);
    assertThat(batch.floor().rigs()).hasSize(rigs);
    assertThat(batch.shotList().days()).isEqualTo(days);
  }

  @ParameterizedTest
  @CsvSource({"30,1", "150,1", "150,2", "150,3", "150,4", "400,1", "2000,1"})
  void hasOnlyJobsThatAreMeasuredAndFitARig(int jobs, long seed) {
    Batch batch = Demo.batch(jobs, seed, DemoKnobs.DATE);
    FitCheck check = new FitCheck(batch.floor());

    assertThat(batch.shotList().jobs())
        .allSatisfy(
            job -> {
              assertThat(job.item().measured()).isTrue();
              assertThat(check.of(job).fitsSomewhere()).as(job.toString()).isTrue();
            });
  }

  @Test
  void keepsEveryRigBusy() {
    Batch batch = Demo.batch();
    FitCheck check = new FitCheck(batch.floor());
    for (Rig rig : batch.floor().rigs()) {
      assertThat(demo.jobs().stream().filter(job -> check.of(job, rig).fits()).count())
          .as(rig.id())
          .isGreaterThanOrEqualTo(10);
    }
  }

  @Test
  void leavesChoiceToMostJobs() {
    FitCheck check = new FitCheck(Demo.batch().floor());
    long choice =
        demo.jobs().stream()
            .filter(job -> check.of(job).rigs().stream().filter(fit -> fit.fits()).count() > 1)
            .count();

    assertThat(choice).isGreaterThan(demo.jobs().size() * 2L / 3);
  }

  @Test
  void hasSamplesThatAreShotOnTwoRecipes() {
    Map<String, List<ShotJob>> bySample =
        demo.jobs().stream().collect(Collectors.groupingBy(ShotJob::sample));
    List<List<ShotJob>> shared =
        bySample.values().stream().filter(jobs -> jobs.size() > 1).toList();

    assertThat(shared).hasSizeGreaterThan(5);
    assertThat(shared)
        .allSatisfy(
            jobs -> {
              assertThat(jobs).extracting(ShotJob::recipe).doesNotHaveDuplicates();
              assertThat(jobs.stream().map(ShotJob::item).distinct()).hasSize(1);
              assertThat(jobs.stream().map(ShotJob::article).distinct()).hasSize(1);
            });
  }

  @Test
  void hasArticleNumbersWithLeadingZerosAndSomeGtins() {
    assertThat(demo.jobs()).allMatch(job -> job.article().matches("00\\d{6}"));
    assertThat(demo.jobs())
        .anyMatch(job -> job.gtin() == null)
        .anyMatch(job -> job.gtin() != null)
        .allMatch(job -> job.gtin() == null || job.gtin().matches("952\\d{10}"))
        .allMatch(job -> job.gtin() == null || Gtin.valid(job.gtin()));
  }

  @Test
  void hasALoanedCollectionFromTenToFour() {
    assertThat(demo.jobs().stream().filter(job -> job.leavesAt() != null))
        .hasSizeBetween(5, 20)
        .allSatisfy(
            job -> {
              assertThat(job.arrivesAt().toLocalTime()).isEqualTo(LocalTime.of(10, 0));
              assertThat(job.leavesAt().toLocalTime()).isEqualTo(LocalTime.of(16, 0));
            });
    assertThat(demo.jobs()).anyMatch(job -> job.arrivesAt() != null && job.leavesAt() == null);
  }

  @Test
  void promisesForTheCourierNoonThreeAndFiveWithFewMusts() {
    assertThat(promised(10)).isGreaterThan(15);
    assertThat(promised(12)).isGreaterThan(25);
    assertThat(promised(15)).isGreaterThan(25);
    assertThat(promised(17)).isGreaterThan(15);
    assertThat(demo.jobs().stream().filter(ShotJob::must))
        .hasSizeBetween(2, 12)
        .allMatch(job -> job.promise().dueAt().getHour() >= 15);
    assertThat(demo.jobs()).anyMatch(job -> job.promise() == null);
  }

  @Test
  void weighsJobsFromOneToTen() {
    assertThat(demo.jobs().stream().mapToInt(ShotJob::weight))
        .contains(1, 10)
        .allMatch(weight -> weight >= 1 && weight <= 10);
  }

  @Test
  void spreadsLongListsOverAllDays() {
    ShotList list = Demo.batch(2000, 1, DemoKnobs.DATE).shotList();

    assertThat(
            list.jobs().stream()
                .filter(job -> job.promise() != null)
                .map(job -> job.promise().dueAt().toLocalDate())
                .distinct())
        .hasSize(list.days())
        .allMatch(date -> date.isBefore(list.date().plusDays(list.days())));
  }

  private long promised(int hour) {
    return demo.jobs().stream()
        .filter(job -> job.promise() != null && job.promise().dueAt().getHour() == hour)
        .count();
  }
}
