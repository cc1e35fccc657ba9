package rigmorrow.model.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static rigmorrow.model.FloorFixtures.hours;
import static rigmorrow.model.change.Changed.batch;
import static rigmorrow.model.change.Changed.change;
import static rigmorrow.model.change.Changed.problems;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.floor.Closure;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.KitUnit;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.scenario.ScenarioChange;

class CrewChangesTest {
  private final Floor floor = FloorFixtures.floor().build();

  private Operator operator(ScenarioChange change, String id) {
    return change(batch(floor), change).floor().operator(id).orElseThrow();
  }

  @Test
  void oneMoreOperatorHasNobodysAbsences() {
    LocalDateTime noon = LocalDateTime.parse("2026-03-02T12:00");
    Operator ann = floor.crew().get(0);
    Operator absent =
        new Operator(
            ann.id(),
            ann.name(),
            ann.skills(),
            ann.shifts(),
            ann.breaks(),
            List.of(new Closure(noon, noon.plusDays(9), "holiday")));
    ScenarioBatch made =
        ScenarioMaker.of(
            batch(floor.withCrew(List.of(absent))),
            List.of(new FloorChange.OperatorLike("ann", "cy", "Cy")));
    Operator cy = new Operator("cy", "Cy", ann.skills(), ann.shifts(), ann.breaks(), List.of());
    assertThat(made.batch().floor().crew()).containsExactly(absent, cy);
    assertThat(made.regularCrew()).containsExactly(absent, cy);
  }

  @Test
  void operatorsHaveIdsOfTheirOwn() {
    assertThat(problems(new FloorChange.OperatorLike("anne", "bo", "x")))
        .extracting(ChangeProblem::field)
        .containsExactly("like", "id");
  }

  @Test
  void noMoreOperatorsThanAFloorFileMayHave() {
    ScenarioChange[] many = new ScenarioChange[30];
    for (int i = 0; i < many.length; i++) {
      many[i] = new FloorChange.OperatorLike("ann", "n" + i, "x");
    }
    assertThat(problems(many))
        .containsExactly(new ChangeProblem(29, "id", "n29", "at most 31 operators", List.of()));
  }

  @Test
  void anOperatorLearnsWhatTheFloorAsksFor() {
    assertThat(operator(new FloorChange.MoreSkills("bo", Set.of("hang", "light")), "bo").skills())
        .containsExactlyInAnyOrder("handle", "hang", "light");
    assertThat(problems(new FloorChange.MoreSkills("bo", Set.of("juggle", "handle"))))
        .extracting(ChangeProblem::value, ChangeProblem::accepted)
        .containsExactly(
            tuple("juggle", "skills that the floor asks for"),
            tuple("handle", "a skill that bo does not have"));
  }

  @Test
  void longerHoursAreOvertimeUnlessItSaysRegular() {
    var overtime = new FloorChange.LongerHours(List.of("table"), List.of("bo"), 30, 60, false);
    ScenarioBatch made = ScenarioMaker.of(batch(floor), List.of(overtime));
    assertThat(made.batch().floor().rig("table").orElseThrow().open())
        .containsExactly(hours("06:30", "19:00"));
    assertThat(made.batch().floor().rig("platform").orElseThrow().open())
        .containsExactly(hours("07:00", "18:00"));
    assertThat(made.batch().floor().crew().get(1).shifts())
        .containsExactly(hours("07:00", "17:30"));
    assertThat(made.regularCrew().get(1).shifts()).containsExactly(hours("07:30", "16:30"));
    var regular = new FloorChange.LongerHours(List.of(), List.of("bo"), 0, 60, true);
    ScenarioBatch both = ScenarioMaker.of(batch(floor), List.of(overtime, regular));
    assertThat(both.batch().floor().crew().get(1).shifts())
        .containsExactly(hours("07:00", "18:30"));
    assertThat(both.regularCrew().get(1).shifts()).containsExactly(hours("07:30", "17:30"));
  }

  @Test
  void hoursMayGoOverMidnight() {
    Floor late =
        FloorFixtures.floor()
            .crew(shift("x", "16:00", "00:00", DayOfWeek.MONDAY))
            .rigs(FloorFixtures.table().open(hours("01:00", "09:00", DayOfWeek.MONDAY)).build())
            .build();
    var longer = new FloorChange.LongerHours(List.of("table"), List.of("x"), 90, 45, true);
    Floor after = change(batch(late), longer).floor();
    assertThat(after.crew().get(0).shifts())
        .containsExactly(hours("14:30", "00:45", DayOfWeek.MONDAY));
    assertThat(after.rigs().get(0).open())
        .containsExactly(
            hours("23:30", "00:00", DayOfWeek.SUNDAY), hours("00:00", "09:45", DayOfWeek.MONDAY));
  }

  @Test
  void hoursStayBelowADay() {
    Floor always = FloorFixtures.floor().crew(shift("x", "00:00", "00:00")).build();
    var longer = new FloorChange.LongerHours(List.of("table"), List.of("x"), 0, 780, false);
    assertThat(ScenarioMaker.of(batch(always), List.of(longer)).problems())
        .extracting(ChangeProblem::field, ChangeProblem::value)
        .containsExactly(tuple("rigs", "table"), tuple("operators", "x"));
  }

  private static Operator shift(String id, String from, String to, DayOfWeek... days) {
    return new Operator(id, id, Set.of(), List.of(hours(from, to, days)), List.of(), List.of());
  }

  @Test
  void aSecondShiftIsWorkedBySomebodyElse() {
    var second =
        new FloorChange.SecondShift(
            List.of("table"),
            List.of("ann", "bo"),
            hours("18:00", "23:00"),
            List.of(hours("20:00", "20:30")));
    ScenarioBatch made = ScenarioMaker.of(batch(floor), List.of(second, second));
    assertThat(made.batch().floor().rigs().get(0).open())
        .containsExactly(hours("07:00", "18:00"), hours("18:00", "23:00"), hours("18:00", "23:00"));
    assertThat(made.batch().floor().crew())
        .extracting(Operator::id)
        .containsExactly("ann", "bo", "ann-2", "bo-2", "ann-2'", "bo-2'");
    Operator other = made.batch().floor().crew().get(2);
    assertThat(other.skills()).isEqualTo(floor.crew().get(0).skills());
    assertThat(other.shifts()).containsExactly(hours("18:00", "23:00"));
    assertThat(other.breaks()).containsExactly(hours("20:00", "20:30"));
    assertThat(made.regularCrew()).isEqualTo(made.batch().floor().crew());
  }

  @Test
  void morePiecesOfKitLieWhereTheFirstLies() {
    Floor after = change(batch(floor), new FloorChange.MoreUnits("head", 2, null)).floor();
    assertThat(after.kits().get(0).units())
        .containsExactly(
            new KitUnit("head-1", "shelf"),
            new KitUnit("head-2", "shelf"),
            new KitUnit("head-3", "shelf"));
    Floor there = change(batch(floor), new FloorChange.MoreUnits("head", 1, "table")).floor();
    assertThat(there.kits().get(0).units()).endsWith(new KitUnit("head-2", "table"));
    assertThat(problems(new FloorChange.MoreUnits("hed", 1, "tabel")))
        .extracting(ChangeProblem::field, ChangeProblem::known)
        .containsExactly(
            tuple("kit", List.of("head")), tuple("place", List.of("platform", "shelf", "table")));
  }

  @Test
  void nothingChangesWithoutAChange() {
    var before = batch(floor);
    ScenarioBatch made = ScenarioMaker.of(before, List.of());
    assertThat(made.batch()).isEqualTo(before);
    assertThat(made.regularCrew()).isEqualTo(floor.crew());
  }
}
