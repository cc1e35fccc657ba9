package rigmorrow.model.outside;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.model.lifting.LiftingChecks;
import rigmorrow.model.money.MoneyChecks;
import rigmorrow.model.motion.MotionChecks;
import rigmorrow.model.shot.GtinChecks;
import rigmorrow.model.statistic.StatisticChecks;
import rigmorrow.model.use.UseChecks;
import rigmorrow.model.work.CaptureChecks;

class OutsidePageTest {
  @Test
  void listsWhatTheChecksGiveToday() throws IOException {
    List<OutsideCheck> checks = new ArrayList<>(MotionChecks.all());
    checks.addAll(LiftingChecks.all());
    checks.addAll(CaptureChecks.all());
    checks.addAll(GtinChecks.all());
    checks.addAll(MoneyChecks.all());
    checks.addAll(StatisticChecks.all());
    checks.addAll(UseChecks.all());
    OutsidePage.holdsSection("model", checks);
  }
}
