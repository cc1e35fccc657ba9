package rigmorrow.model.lifting;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.outside.OutsideCheck;

class LiftingMultipliersTest {
  @ParameterizedTest
  @MethodSource("rigmorrow.model.lifting.LiftingChecks#multipliers")
  void matchTheTables(OutsideCheck check) {
    check.verify();
  }
}
