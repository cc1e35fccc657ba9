package rigmorrow.data.column;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumeralTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "12|12",
        "0012|12",
        "12,5|12.5",
        "12.5|12.5",
        ",5|0.5",
        "0,250|0.250",
        "00.250|0.250",
        "1234,567|1234.567",
        "1,2345|1.2345",
        "1.234,5|1234.5",
        "1,234.5|1234.5",
        "1.234.567|1234567",
        "1,234,567.89|1234567.89",
        "1 234|1234",
        "1 234,567|1234.567",
        "1'234.5|1234.5",
        "1\u00a0234\u00a0567|1234567"
      })
  void readsWhatHasOneMeaning(String written, BigDecimal value) {
    Numeral numeral = Numeral.of(written);
    assertThat(numeral).isNotNull();
    assertThat(numeral.ambiguous()).isFalse();
    assertThat(numeral.read(',')).isEqualByComparingTo(value);
    assertThat(numeral.read('.')).isEqualByComparingTo(value);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"1,234|1.234|1234", "12.345|12345|12.345", "999,000|999|999000"})
  void leavesOneGroupOfThreeDigitsToTheDecimalMark(
      String written, BigDecimal withComma, BigDecimal withPoint) {
    Numeral numeral = Numeral.of(written);
    assertThat(numeral).isNotNull();
    assertThat(numeral.ambiguous()).isTrue();
    assertThat(numeral.read(',')).isEqualByComparingTo(withComma);
    assertThat(numeral.read('.')).isEqualByComparingTo(withPoint);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"12,5|,", "12.5|.", "1.234,5|,", "1,234,567|.", "0.250|."})
  void showsItsDecimalMark(String written, char mark) {
    assertThat(Numeral.of(written)).extracting(Numeral::mark).isEqualTo(mark);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "-5",
        "+5",
        "5.",
        "1e3",
        "1E+3",
        "NaN",
        "Infinity",
        "0x10",
        "1,23,456",
        "1.234.5",
        "1,234,5",
        "1.234,567.8",
        "12 34",
        "1 234 56",
        "١٢",
        "1_000",
        ".",
        "12d",
        "11111111112222222222333333333344444444445"
      })
  void refusesWhatIsNoPlainNumber(String written) {
    assertThat(Numeral.of(written)).isNull();
  }
}
