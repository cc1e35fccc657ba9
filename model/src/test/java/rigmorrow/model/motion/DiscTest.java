package rigmorrow.model.motion;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.outside.OutsideCheck;

class DiscTest {

  @ParameterizedTest
  @MethodSource("rigmorrow.model.motion.MotionChecks#plate")
  void weighsWhatAGlassPlateWeighs(OutsideCheck check) {
    check.verify();
  }

  @ParameterizedTest
  @CsvSource({"0, 8, 2500, diameter", "850, -8, 2500, thickness", "850, 8, NaN, density"})
  void refusesNumbersOutsideTheirBounds(
      double diameterMm, double thicknessMm, double density, String name) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Disc(diameterMm, thicknessMm, density))
        .withMessageStartingWith(name);
  }
}
