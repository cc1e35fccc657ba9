package rigmorrow.model.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rigmorrow.model.FloorFixtures.hours;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.RigBuilder;
import rigmorrow.model.floor.Closure;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Operator;

class WorkingHoursTest {
  private static final LocalDate SPRING = LocalDate.of(2026, 3, 29);
  private static final LocalDate AUTUMN = LocalDate.of(2026, 10, 25);
  private static final int HOUR = 3600;

  @Test
  void breaksSplitAShift() {
    Operator ann = FloorFixtures.operator("ann");

    assertThat(WorkingHours.of(ann, clock(FloorFixtures.MONDAY, 1)))
        .containsExactly(new Span(27_000, 43_200), new Span(45_000, 59_400));
  }

  @Test
  void breaksAreWhatAShiftHasAndWorkHasNot() {
    Operator ann = FloorFixtures.operator("ann");

    assertThat(WorkingHours.shifts(ann, clock(FloorFixtures.MONDAY, 1)))
        .containsExactly(new Span(27_000, 59_400));
    assertThat(WorkingHours.breaks(ann, clock(FloorFixtures.MONDAY, 1)))
        .containsExactly(new Span(43_200, 45_000));
  }

  @Test
  void hoursOnlyHoldOnTheirDays() {
    RigBuilder rig = new RigBuilder("r").open(hours("08:00", "10:00", DayOfWeek.TUESDAY));

    assertThat(spans(rig, FloorFixtures.MONDAY, 3)).containsExactly(new Span(32 * HOUR, 34 * HOUR));
  }

  @Test
  void hoursThatTouchAreOneSpan() {
    RigBuilder rig = new RigBuilder("r").open(hours("12:00", "00:00"), hours("00:00", "12:00"));

    assertThat(spans(rig, FloorFixtures.MONDAY, 2)).containsExactly(new Span(0, 48 * HOUR));
  }

  @Test
  void midnightToMidnightIsTheWholeDay() {
    RigBuilder rig = new RigBuilder("r").open(hours("00:00", "00:00", DayOfWeek.TUESDAY));

    assertThat(spans(rig, FloorFixtures.MONDAY, 3)).containsExactly(new Span(24 * HOUR, 48 * HOUR));
    assertThat(spans(rig.open(hours("00:00", "00:00")), AUTUMN, 1))
        .containsExactly(new Span(0, 25 * HOUR));
  }

  @Test
  void noOtherHoursEndWhenTheyStart() {
    assertThatThrownBy(() -> hours("07:00", "07:00")).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aNightShiftReachesIntoTheFirstMorningAndStopsAtThePlansEnd() {
    RigBuilder rig = new RigBuilder("r").open(hours("22:00", "06:00"));

    assertThat(spans(rig, FloorFixtures.MONDAY, 1))
        .containsExactly(new Span(0, 6 * HOUR), new Span(22 * HOUR, 24 * HOUR));
  }

  @Test
  void aNightShiftBelongsToTheDayItStartsOn() {
    RigBuilder rig = new RigBuilder("r").open(hours("22:00", "06:00", DayOfWeek.MONDAY));

    assertThat(spans(rig, FloorFixtures.MONDAY, 2)).containsExactly(new Span(22 * HOUR, 30 * HOUR));
  }

  @Test
  void theNightOfTheSpringChangeIsAnHourShorter() {
    RigBuilder rig = new RigBuilder("r").open(hours("22:00", "06:00"));

    assertThat(spans(rig, SPRING.minusDays(1), 2))
        .containsExactly(
            new Span(0, 6 * HOUR), new Span(22 * HOUR, 29 * HOUR), new Span(45 * HOUR, 47 * HOUR));
  }

  @Test
  void theNightOfTheAutumnChangeIsAnHourLonger() {
    RigBuilder rig = new RigBuilder("r").open(hours("22:00", "06:00"));

    assertThat(spans(rig, AUTUMN.minusDays(1), 2))
        .containsExactly(
            new Span(0, 6 * HOUR), new Span(22 * HOUR, 31 * HOUR), new Span(47 * HOUR, 49 * HOUR));
  }

  @Test
  void aClosureCutsASpan() {
    RigBuilder rig =
        new RigBuilder("r")
            .closed(closure("2026-03-02T09:00", "2026-03-02T10:00"))
            .open(hours("07:00", "18:00"));

    assertThat(spans(rig, FloorFixtures.MONDAY, 1))
        .containsExactly(new Span(7 * HOUR, 9 * HOUR), new Span(10 * HOUR, 18 * HOUR));
  }

  @Test
  void aClosureOverSeveralDaysTakesThemAll() {
    RigBuilder rig = new RigBuilder("r").closed(closure("2026-02-20T00:00", "2026-03-03T17:00"));

    assertThat(spans(rig, FloorFixtures.MONDAY, 2)).containsExactly(new Span(41 * HOUR, 42 * HOUR));
  }

  @Test
  void overlappingBreaksAndClosuresAreTakenOnce() {
    Operator operator =
        new Operator(
            "o",
            "o",
            Set.of(),
            List.of(hours("08:00", "16:00")),
            List.of(hours("10:00", "11:00"), hours("10:30", "11:30")),
            List.of(closure("2026-03-02T11:00", "2026-03-02T12:00")));

    assertThat(WorkingHours.of(operator, clock(FloorFixtures.MONDAY, 1)))
        .containsExactly(new Span(8 * HOUR, 10 * HOUR), new Span(12 * HOUR, 16 * HOUR));
  }

  @Test
  void aClosureWithinTheSkippedHourTakesNothing() {
    OpenHours morning = hours("00:00", "06:00");
    RigBuilder rig =
        new RigBuilder("r").open(morning).closed(closure("2026-03-29T02:30", "2026-03-29T03:10"));

    assertThat(spans(rig, SPRING, 1)).containsExactly(new Span(0, 5 * HOUR));
  }

  private static Closure closure(String from, String to) {
    return new Closure(LocalDateTime.parse(from), LocalDateTime.parse(to), "service");
  }

  private static List<Span> spans(RigBuilder rig, LocalDate date, int days) {
    return WorkingHours.of(rig.build(), clock(date, days));
  }

  private static PlanClock clock(LocalDate date, int days) {
    return new PlanClock(FloorFixtures.COPENHAGEN, date, days);
  }
}
