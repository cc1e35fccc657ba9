package rigmorrow.model.statistic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BootstrapTest {
  @Test
  void comesCloseToEveryDraw() {
    StatisticChecks.all().get(1).verify();
  }

  @Test
  void isAPointWhereAllValuesAreTheSame() {
    assertThat(Bootstrap.mean(3, 3, 3)).isEqualTo(new Interval(3, 3, 3, 3));
    assertThat(Bootstrap.mean(0, 0).holdsZero()).isTrue();
  }

  @Test
  void givesTheSameEachTime() {
    assertThat(Bootstrap.mean(1, 5, 9)).isEqualTo(Bootstrap.mean(1, 5, 9));
  }

  /** Of samples of 30 from one distribution about 95 in 100 intervals hold its mean. */
  @Test
  void holdsTheTruthAboutAsOftenAsItSays() {
    SplittableRandom random = new SplittableRandom(7);
    int held = 0;
    int samples = 300;
    for (int sample = 0; sample < samples; sample++) {
      double[] values = new double[30];
      for (int i = 0; i < values.length; i++) {
        values[i] = random.nextDouble() + random.nextDouble() - 1;
      }
      held += Bootstrap.mean(values).holdsZero() ? 1 : 0;
    }
    assertThat(held / (double) samples).isBetween(0.90, 0.98);
  }

  @Test
  void turnsRoundWhereTheFactorIsBelowZero() {
    assertThat(new Interval(2, 1, 4, 9).times(-3)).isEqualTo(new Interval(-6, -12, -3, 9));
    assertThat(new Interval(2, 1, 4, 9).plus(1)).isEqualTo(new Interval(3, 2, 5, 9));
    assertThat(new Interval(2, 1, 4, 9).holdsZero()).isFalse();
  }

  @Test
  void refusesWhatIsNoNumber() {
    assertThatThrownBy(() -> Bootstrap.mean()).hasMessageContaining("count is 0");
    assertThatThrownBy(() -> Bootstrap.mean(1, Double.NaN)).hasMessageContaining("finite");
  }
}
