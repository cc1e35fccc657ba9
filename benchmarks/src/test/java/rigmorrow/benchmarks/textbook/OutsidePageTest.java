package rigmorrow.benchmarks.textbook;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.model.outside.OutsideCheck;
import rigmorrow.model.outside.OutsidePage;

/** Holds the lists once, so that no instance is planned twice. */
class OutsidePageTest {
  static final List<OutsideCheck> SEQUENCING = SequencingChecks.all();
  static final List<OutsideCheck> MACHINES = MachinesChecks.all();
  static final List<OutsideCheck> LITERATURE = LiteratureChecks.all();

  @Test
  void listsWhatTheChecksGiveToday() throws IOException {
    List<OutsideCheck> checks = new ArrayList<>(SEQUENCING);
    checks.addAll(MACHINES);
    checks.addAll(LITERATURE);
    OutsidePage.holdsSection("benchmarks", checks);
  }
}
