package rigmorrow.model.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DiscTest {

  /** Computed: 11.35 kg; common practice says about 11.5 kg for such a plate. */
  @Test
  void weighsWhatAGlassPlateOf850MmWeighs() {
    double massKg = new Disc(850, 8, 2500).massKg();
    assertThat(massKg).isCloseTo(11.35, within(0.005));
    assertThat(massKg).isCloseTo(11.5, within(0.2));
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
