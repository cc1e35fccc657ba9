package rigmorrow.benchmarks.textbook;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.outside.OutsideCheck;

class LiteratureTest {
  static List<OutsideCheck> checks() {
    return OutsidePageTest.LITERATURE;
  }

  @ParameterizedTest
  @MethodSource("checks")
  void reachesWhatIsPublished(OutsideCheck check) {
    check.verify();
  }
}
