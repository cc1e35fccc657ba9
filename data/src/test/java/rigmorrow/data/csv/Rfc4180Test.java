package rigmorrow.data.csv;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.outside.OutsideCheck;

class Rfc4180Test {
  @ParameterizedTest
  @MethodSource("rigmorrow.data.csv.CsvChecks#all")
  void isReadAsItsExamplesShow(OutsideCheck check) {
    check.verify();
  }
}
