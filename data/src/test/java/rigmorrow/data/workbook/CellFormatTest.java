package rigmorrow.data.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CellFormatTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "000000!4711!004711",
        "0000!47110!47110",
        "000\\-000!4711!004-711",
        "\"A-\"0000!12!A-0012",
        "General!4711!4711",
        "#,##0!4711!4711",
        "0.00!4711!4711",
        "@!4711!4711",
        "0\" kg\"!12!12 kg",
        "0.0\\ \\c\\m!12.5!12.5 cm",
        "General\" mm\"!12.5!12.5 mm",
        "000;[Red]-000!7!007",
        "_-* 000_-!7!007"
      })
  void showsANumberAsASpreadsheetDoes(String code, String plain, String shown) {
    assertThat(CellFormat.of(code).shown(plain)).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "yyyy-mm-dd!true!false",
        "dd/mm/yyyy hh:mm!true!true",
        "[$-406]d. mmmm yyyy!true!false",
        "mmm!true!false",
        "h:mm AM/PM!false!true",
        "[h]:mm:ss!false!true",
        "mm:ss!false!true",
        "0.00!false!false",
        "0\" days\"!false!false",
        "[Red]0!false!false",
        "0.00E+00!false!false"
      })
  void knowsDaysAndTimes(String code, boolean date, boolean time) {
    assertThat(CellFormat.of(code).date()).isEqualTo(date);
    assertThat(CellFormat.of(code).time()).isEqualTo(time);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", ";", "\"", "[", "\\", "_", "*", "[h", "0\"kg", ";;;"})
  void takesAnyCode(String code) {
    assertThat(CellFormat.of(code).shown("12")).contains("12");
  }
}
