package rigmorrow.model.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.floor.Closure;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;
import rigmorrow.model.time.WorkingHours;

class OpenTimeTest {
  private static final int QUARTER = 900;

  /** The two ways to working hours are written apart; each checks the other. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void agreesWithTheWorkingHoursAlsoAroundClockChanges(long seed) {
    Random random = new Random(seed);
    for (LocalDate date :
        List.of(FloorFixtures.MONDAY, LocalDate.of(2026, 3, 28), LocalDate.of(2026, 10, 24))) {
      PlanClock clock = new PlanClock(FloorFixtures.COPENHAGEN, date, 2);
      Operator operator = operator(random, date);
      List<Span> working = WorkingHours.of(operator, clock);
      OpenTime open = OpenTime.of(operator, clock);

      for (int second = 0; second < clock.horizonSeconds(); second += QUARTER) {
        Span at = new Span(second, second + 1);
        assertThat(open.openAt(second))
            .as("%s at %s", operator, clock.at(second))
            .isEqualTo(working.stream().anyMatch(span -> span.contains(at)));
      }
      int from = random.nextInt(clock.horizonSeconds() / 2);
      Span any = new Span(from, from + random.nextInt(clock.horizonSeconds() / 2));
      int worked = working.stream().mapToInt(span -> PlannedRun.sharedSeconds(span, any)).sum();
      assertThat(open.closedSeconds(any)).as("%s", operator).isEqualTo(any.seconds() - worked);
      assertThat(open.firstOpening().orElse(-1))
          .isEqualTo(working.isEmpty() ? -1 : working.get(0).start());
    }
  }

  @Test
  void midnightToMidnightIsTheWholeDay() {
    PlanClock clock = new PlanClock(FloorFixtures.COPENHAGEN, LocalDate.of(2026, 10, 25), 2);
    List<OpenHours> sundays = List.of(FloorFixtures.hours("00:00", "00:00", DayOfWeek.SUNDAY));
    OpenTime open =
        OpenTime.of(new Operator("o", "o", Set.of(), sundays, List.of(), List.of()), clock);

    assertThat(open.firstOpening()).hasValue(0);
    assertThat(open.closedSeconds(new Span(0, 25 * 3600))).isZero();
    assertThat(open.closedSeconds(new Span(0, clock.horizonSeconds()))).isEqualTo(24 * 3600);
  }

  private static Operator operator(Random random, LocalDate date) {
    LocalDateTime from = date.atTime(quarter(random));
    return new Operator(
        "o",
        "o",
        Set.of(),
        Stream.of(1, 2).map(i -> hours(random)).toList(),
        List.of(hours(random)),
        List.of(new Closure(from, from.plusMinutes(15L * (1 + random.nextInt(40))), "away")));
  }

  private static OpenHours hours(Random random) {
    LocalTime from = quarter(random);
    return new OpenHours(Set.of(), from, from.plusMinutes(15L * (1 + random.nextInt(48))));
  }

  private static LocalTime quarter(Random random) {
    return LocalTime.ofSecondOfDay((long) QUARTER * random.nextInt(96));
  }
}
