package rigmorrow.model.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class InvestmentTest {
  private final Investment rig = new Investment(10_000, 5, 10, 500);

  @Test
  void paysItsRunningCostFirst() {
    assertThat(rig.netPerYear(4500)).isEqualTo(4000);
    assertThat(rig.paybackYears(4500)).hasValue(2.5);
    assertThat(rig.paybackYears(500)).isEmpty();
    assertThat(rig.paybackYears(-100)).isEmpty();
  }

  @Test
  void paysBackAfterItsLifeWithoutInterestOnly() {
    assertThat(rig.paybackYears(1500)).hasValue(10);
    assertThat(rig.discountedPaybackYears(1500)).isEmpty();
  }

  @Test
  void takesLongerWithInterest() {
    // 4,000 a year at 10 %: 3,636.36, 3,305.79, 3,005.26; of the third year 52.15 are not needed.
    assertThat(rig.discountedPaybackYears(4500).orElseThrow()).isCloseTo(3.0192, within(1e-3));
  }

  @Test
  void isWorthNothingWhereItSavesWhatItCosts() {
    assertThat(rig.netPresentValue(rig.costPerYear())).isCloseTo(0, within(1e-9));
    assertThat(rig.netPresentValue(rig.costPerYear() + 1)).isPositive();
  }

  @Test
  void paysBackAtOnceWhereItCostsNothing() {
    Investment free = new Investment(0, 1, 5, -20);
    assertThat(free.paybackYears(0)).hasValue(0);
    assertThat(free.discountedPaybackYears(0)).hasValue(0);
    assertThat(free.paybackYears(-30)).isEmpty();
    assertThat(free.discountedPaybackYears(-30)).isEmpty();
  }

  @Test
  void refusesFiguresThatMakeNoSense() {
    assertThatThrownBy(() -> new Investment(-1, 5, 10, 0)).hasMessageContaining("purchase.price");
    assertThatThrownBy(() -> new Investment(1, 0, 10, 0)).hasMessageContaining("lifeYears");
    assertThatThrownBy(() -> new Investment(1, 5, 101, 0)).hasMessageContaining("interestPercent");
    assertThatThrownBy(() -> new Investment(1, 5, 10, Double.NaN))
        .hasMessageContaining("runningPerYear");
  }
}
