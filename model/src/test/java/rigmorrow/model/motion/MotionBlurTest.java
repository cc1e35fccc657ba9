package rigmorrow.model.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MotionBlurTest {

  @Test
  void turnsSoThatTheEdgeMovesOnePixelDuringTheExposure() {
    double radPerSecond = MotionBlur.maximumTurnRadPerSecond(1, 10, 0.01, 200);
    double edgeMmDuringExposure = radPerSecond * 200 * 0.01;
    assertThat(edgeMmDuringExposure).isCloseTo(0.1, within(1e-12));
  }

  @Test
  void turnsFasterWithAShorterFlash() {
    assertThat(MotionBlur.maximumTurnRadPerSecond(1, 10, 0.001, 200))
        .isCloseTo(10 * MotionBlur.maximumTurnRadPerSecond(1, 10, 0.01, 200), within(1e-12));
  }

  @Test
  void blursByTheAllowedPixelsAtTheHighestSpeed() {
    double radPerSecond = MotionBlur.maximumTurnRadPerSecond(1.5, 7, 0.004, 130);
    assertThat(MotionBlur.blurPixels(radPerSecond, 7, 0.004, 130)).isCloseTo(1.5, within(1e-12));
  }

  @Test
  void doesNotBlurAStandingItem() {
    assertThat(MotionBlur.blurPixels(0, 7, 0.004, 130)).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "0, 1, 1, 1, allowed blur",
    "1, 0, 1, 1, scale",
    "1, 1, 0, 1, exposure",
    "1, 1, 1, 0, edge radius",
    "1, 1, 1, NaN, edge radius"
  })
  void refusesNumbersOutsideTheirBounds(
      double pixels, double scale, double exposure, double radius, String name) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MotionBlur.maximumTurnRadPerSecond(pixels, scale, exposure, radius))
        .withMessageStartingWith(name);
  }

  @Test
  void refusesANegativeTurnSpeed() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MotionBlur.blurPixels(-1, 1, 1, 1))
        .withMessageStartingWith("turn speed");
  }
}
