package rigmorrow.data.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;

class DemoHistoryTest {
  private final List<Batch> days = DemoHistory.days(30);

  @Test
  void goesRoundTheYearInOrder() {
    assertThat(days).extracting(day -> day.shotList().date()).isSorted().doesNotHaveDuplicates();
    assertThat(days.stream().map(day -> day.shotList().date().getMonth()).distinct()).hasSize(12);
  }

  @Test
  void isTheSameForTheSameIndex() {
    assertThat(DemoHistory.batch(8)).isEqualTo(days.get(8));
  }

  @Test
  void hasOnlyJobsThatFitARig() {
    for (Batch day : days) {
      FitCheck check = new FitCheck(day.floor());
      assertThat(day.shotList().jobs()).allMatch(job -> check.of(job).fitsSomewhere());
    }
  }

  @Test
  void changesWithTheSeason() {
    assertThat(share("Jacket", 9, 10)).isGreaterThan(share("Jacket", 5, 6) * 1.3);
    assertThat(share("Shoes", 3, 4)).isGreaterThan(share("Shoes", 6, 7) * 1.3);
    assertThat(days.stream().mapToInt(day -> day.shotList().jobs().size()).distinct())
        .hasSizeGreaterThan(15);
  }

  @Test
  void hasRushDaysAndBreakdownDays() {
    assertThat(days.stream().filter(DemoHistoryTest::broken)).hasSizeBetween(3, 10);
    assertThat(days.stream().filter(day -> morningShare(day) > 0.5)).hasSizeBetween(1, 10);
  }

  private static boolean broken(Batch day) {
    return day.floor().rigs().stream()
        .flatMap(rig -> rig.closed().stream())
        .anyMatch(closure -> closure.reason().equals("breakdown"));
  }

  private static double morningShare(Batch day) {
    List<ShotJob> jobs = day.shotList().jobs();
    return jobs.stream()
            .filter(job -> job.promise() != null && job.promise().dueAt().getHour() <= 12)
            .count()
        / (double) jobs.size();
  }

  private double share(String product, int fromMonth, int toMonth) {
    List<ShotJob> jobs =
        days.stream()
            .filter(day -> day.shotList().date().getMonthValue() >= fromMonth)
            .filter(day -> day.shotList().date().getMonthValue() <= toMonth)
            .flatMap(day -> day.shotList().jobs().stream())
            .toList();
    return jobs.stream().filter(job -> job.name().startsWith(product)).count()
        / (double) jobs.size();
  }
}
