package rigmorrow.model.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.JobBuilder;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.scenario.ScenarioChange;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.ShotList;

/** A batch of two jobs on a floor, changed. */
final class Changed {
  private Changed() {}

  static Batch batch(Floor floor, Pin... pins) {
    return new Batch(
        floor,
        new ShotList(
            LocalDate.parse("2026-03-02"),
            1,
            List.of(new JobBuilder("a").build(), new JobBuilder("b").build()),
            List.of(pins)));
  }

  /** The changed batch; every change can be made. */
  static Batch change(Batch batch, ScenarioChange... changes) {
    ScenarioBatch made = ScenarioMaker.of(batch, List.of(changes));
    assertThat(made.problems()).isEmpty();
    return made.batch();
  }

  /** What is wrong with changes of the usual floor. */
  static List<ChangeProblem> problems(ScenarioChange... changes) {
    return ScenarioMaker.of(batch(FloorFixtures.floor().build()), List.of(changes)).problems();
  }
}
