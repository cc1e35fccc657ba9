package rigmorrow.app.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import rigmorrow.data.cells.RunHead;
import rigmorrow.solver.whatif.Past;

/** What every plan gets, and by what kept plans of another effort are told apart. */
class RunSettingsTest {
  private static final Duration MINUTE = Duration.ofMinutes(1);
  private static final List<Past> DAYS = SmallStudy.days(1, 6);

  private static RunSettings settings(@Nullable Duration time, long steps) {
    return new RunSettings(time, steps, 1, 2, List.of(), false, false);
  }

  private static RunHead head(@Nullable Duration time, long steps) {
    return new Comparison(SmallStudy.study(), DAYS, settings(time, steps), "rigmorrow test").head();
  }

  @Test
  void namesAllThatMayStopAPlan() {
    assertThat(settings(MINUTE, 0).effort()).isEqualTo("1 min on one core");
    assertThat(settings(null, 50).effort()).isEqualTo("50 steps on one core");
    assertThat(settings(MINUTE, 50).effort())
        .isEqualTo("1 min or 50 steps, whichever comes first, on one core");
    assertThat(settings(MINUTE, 50).effortOfRun())
        .isEqualTo("1 min or 50 steps, whichever comes first, on one core, 2 at a time");
  }

  @Test
  void plansOfOtherEffortAreNotTakenForOneAnother() {
    assertThat(
            List.of(
                head(MINUTE, 0).id(),
                head(MINUTE, 50).id(),
                head(MINUTE, 60).id(),
                head(MINUTE.plusSeconds(1), 50).id(),
                head(null, 50).id()))
        .doesNotHaveDuplicates();
    assertThat(head(MINUTE, 50).id()).isEqualTo(head(MINUTE, 50).id());
  }
}
