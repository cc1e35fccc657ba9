package rigmorrow.model.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.outside.OutsideCheck;

class CashFlowsTest {
  static List<OutsideCheck> published() {
    return MoneyChecks.all();
  }

  @ParameterizedTest
  @MethodSource("published")
  void givesWhatIsPublished(OutsideCheck check) {
    check.verify();
  }

  @Test
  void sumsUpWhereThereIsNoInterest() {
    assertThat(CashFlows.presentValue(0, 10, 20, 30)).isEqualTo(60);
    assertThat(CashFlows.annuityFactor(0, 7)).isEqualTo(7);
    assertThat(CashFlows.annuity(0, 4, 100)).isEqualTo(25);
  }

  @Test
  void anAnnuityIsWorthItsPrice() {
    double payment = CashFlows.annuity(0.07, 9, 1234);
    double[] years = new double[9];
    java.util.Arrays.fill(years, payment);
    assertThat(CashFlows.presentValue(0.07, years)).isCloseTo(1234, within(1e-9));
  }

  @Test
  void neverPaysBackWhereTooLittleComesIn() {
    assertThat(CashFlows.payback(100, 30, 30, 39)).isEmpty();
    assertThat(CashFlows.payback(100, 30, 30, 40)).hasValue(3);
    assertThat(CashFlows.payback(100, -30, -30)).isEmpty();
    assertThat(CashFlows.payback(0)).hasValue(0);
    assertThat(CashFlows.discountedPayback(100, 0.1, 60, 50)).isEmpty();
  }

  @Test
  void countsLossesOnTheWay() {
    assertThat(CashFlows.payback(100, -50, 100, 100)).hasValue(2.5);
  }

  @Test
  void refusesWhatIsNoRateAndNoPrice() {
    assertThatThrownBy(() -> CashFlows.presentValue(-1, 5)).hasMessageContaining("rate is -1.0");
    assertThatThrownBy(() -> CashFlows.annuityFactor(Double.NaN, 5)).hasMessageContaining("rate");
    assertThatThrownBy(() -> CashFlows.annuityFactor(0.1, 0)).hasMessageContaining("periods is 0");
    assertThatThrownBy(() -> CashFlows.payback(-1, 5)).hasMessageContaining("price is -1.0");
  }
}
