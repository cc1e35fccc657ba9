package rigmorrow.model.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import rigmorrow.model.FloorFixtures;

/**
 * Clock changes as in Directive 2000/84/EC: at 01:00 UTC on the last Sundays of March and October,
 * which is 29 March and 25 October in 2026.
 */
class PlanClockTest {
  private static final LocalDate SPRING = LocalDate.of(2026, 3, 29);
  private static final LocalDate AUTUMN = LocalDate.of(2026, 10, 25);
  private static final int HOUR = 3600;

  @Test
  void countsFromTheFirstMidnight() {
    PlanClock clock = clock(FloorFixtures.MONDAY, 2);

    assertThat(clock.secondsAt(FloorFixtures.MONDAY.atStartOfDay())).isZero();
    assertThat(clock.secondsAt(FloorFixtures.MONDAY.atTime(7, 30))).isEqualTo(27_000);
    assertThat(clock.secondsAt(FloorFixtures.MONDAY.minusDays(1).atTime(23, 0))).isEqualTo(-HOUR);
    assertThat(clock.horizonSeconds()).isEqualTo(48 * HOUR);
  }

  @Test
  void theDayOfTheSpringChangeHas23Hours() {
    assertThat(clock(SPRING, 1).horizonSeconds()).isEqualTo(23 * HOUR);
    assertThat(clock(SPRING, 1).secondsAt(SPRING.atTime(8, 0))).isEqualTo(7 * HOUR);
  }

  @Test
  void theDayOfTheAutumnChangeHas25Hours() {
    assertThat(clock(AUTUMN, 1).horizonSeconds()).isEqualTo(25 * HOUR);
    assertThat(clock(AUTUMN, 1).secondsAt(AUTUMN.atTime(8, 0))).isEqualTo(9 * HOUR);
  }

  @Test
  void movesASkippedTimeOnByTheGap() {
    PlanClock clock = clock(SPRING, 1);

    assertThat(clock.secondsAt(SPRING.atTime(2, 30)))
        .isEqualTo(clock.secondsAt(SPRING.atTime(3, 30)))
        .isEqualTo(2 * HOUR + HOUR / 2);
  }

  @Test
  void takesATimeThatComesTwiceAsItsFirst() {
    PlanClock clock = clock(AUTUMN, 1);

    assertThat(clock.secondsAt(AUTUMN.atTime(2, 30))).isEqualTo(2 * HOUR + HOUR / 2);
    assertThat(clock.secondsAt(AUTUMN.atTime(3, 0))).isEqualTo(4 * HOUR);
  }

  @Test
  void tellsTheFloorTimeOfASecond() {
    assertThat(clock(SPRING, 1).at(2 * HOUR).toLocalDateTime())
        .isEqualTo(LocalDateTime.of(2026, 3, 29, 3, 0));
    assertThat(clock(AUTUMN, 1).at(3 * HOUR).toLocalDateTime())
        .isEqualTo(LocalDateTime.of(2026, 10, 25, 2, 0));
    assertThat(clock(FloorFixtures.MONDAY, 1).at(-60).toLocalDateTime())
        .isEqualTo(LocalDateTime.of(2026, 3, 1, 23, 59));
  }

  private static PlanClock clock(LocalDate date, int days) {
    return new PlanClock(FloorFixtures.COPENHAGEN, date, days);
  }
}
