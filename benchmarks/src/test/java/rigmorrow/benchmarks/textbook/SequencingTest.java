package rigmorrow.benchmarks.textbook;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.outside.OutsideCheck;

class SequencingTest {
  static List<OutsideCheck> checks() {
    return OutsidePageTest.SEQUENCING;
  }

  @ParameterizedTest
  @MethodSource("checks")
  void isAsGoodAsTheRuleThatIsProvenBest(OutsideCheck check) {
    check.verify();
  }
}
