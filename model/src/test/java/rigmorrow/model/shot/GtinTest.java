package rigmorrow.model.shot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.model.outside.OutsideCheck;

class GtinTest {

  @ParameterizedTest
  @MethodSource("rigmorrow.model.shot.GtinChecks#all")
  void computesTheCheckDigit(OutsideCheck check) {
    check.verify();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "6291041500", "629104150021 3", "62910415002١3", "A291041500213"})
  void refusesWhatIsNoGtin(String text) {
    assertThat(Gtin.valid(text)).isFalse();
  }

  /** A weight of 3 or 1 is prime to ten, so no change of a single digit goes unseen. */
  @Test
  void seesEveryChangeOfOneDigit() {
    Random random = new Random(7);
    for (int round = 0; round < 200; round++) {
      StringBuilder digits = new StringBuilder();
      int length = new int[] {7, 11, 12, 13}[random.nextInt(4)];
      random.ints(length, 0, 10).forEach(digits::append);
      String whole = digits.toString() + Gtin.checkDigit(digits.toString());
      int at = random.nextInt(whole.length());
      int other = (whole.charAt(at) - '0' + 1 + random.nextInt(9)) % 10;
      assertThat(Gtin.valid(whole)).isTrue();
      assertThat(Gtin.valid(whole.substring(0, at) + other + whole.substring(at + 1))).isFalse();
    }
  }

  /** A shorter GTIN is written in more places with zeros in front; the check digit stays. */
  @Test
  void keepsTheCheckDigitBehindLeadingZeros() {
    assertThat(Gtin.checkDigit("0629104150021")).isEqualTo(Gtin.checkDigit("629104150021"));
  }
}
