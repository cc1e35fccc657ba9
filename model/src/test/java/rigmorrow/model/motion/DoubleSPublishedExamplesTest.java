package rigmorrow.model.motion;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.outside.OutsideCheck;

class DoubleSPublishedExamplesTest {

  @ParameterizedTest
  @MethodSource("rigmorrow.model.motion.MotionChecks#doubleS")
  void matchesWhatIsPublished(OutsideCheck check) {
    check.verify();
  }

  @Test
  void beatsTheDurationOfExample311UnderItsOwnLimits() {
    DoubleSProfile move = DoubleSProfile.between(10, 7, 0, new MoveLimits(10, 10, 30));
    assertThat(move.durationSeconds())
        .isLessThan(MotionChecks.example311UnderTheLoweredLimit().durationSeconds());
  }

  @Test
  void beatsTheDurationOfExample312UnderItsOwnLimits() {
    DoubleSProfile move = DoubleSProfile.between(10, 7.5, 0, new MoveLimits(10, 10, 30));
    assertThat(move.durationSeconds())
        .isLessThan(MotionChecks.example312UnderTheLoweredLimit().durationSeconds());
  }
}
