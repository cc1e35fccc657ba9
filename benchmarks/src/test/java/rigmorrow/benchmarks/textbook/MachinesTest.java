package rigmorrow.benchmarks.textbook;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.outside.OutsideCheck;

class MachinesTest {
  static List<OutsideCheck> checks() {
    return OutsidePageTest.MACHINES;
  }

  @ParameterizedTest
  @MethodSource("checks")
  void endsAsSoonAsCanBe(OutsideCheck check) {
    check.verify();
  }
}
