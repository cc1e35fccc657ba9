package rigmorrow.data.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.work.JobWork;

/** A demo day can be done in time, but only by whoever minds the setups. */
class DemoLoadTest {
  /** A list is asked for by several tests, and its fits take a while. */
  private static final Map<String, DemoLoads> LOADS = new HashMap<>();

  @ParameterizedTest
  @CsvSource({"150,1", "150,2", "150,3", "400,1", "2000,1"})
  void leavesTheCrewAFifthOfItsTimeWhenSetupsAreGrouped(int jobs, long seed) {
    DemoLoads loads = loads(jobs, seed);

    assertThat(loads.handlingSeconds() + loads.changeoverSecondsGrouped())
        .isLessThan((int) (0.8 * loads.crewSeconds()));
  }

  @ParameterizedTest
  @CsvSource({"150,1", "150,2", "150,3", "400,1"})
  void takesNearlyAllOfTheCrewsTimeByDueTime(int jobs, long seed) {
    DemoLoads loads = loads(jobs, seed);

    assertThat(loads.handlingSeconds() + loads.changeoverSecondsByDueTime())
        .isGreaterThan((int) (0.85 * loads.crewSeconds()));
    assertThat(loads.changeoverSecondsByDueTime())
        .isGreaterThan(2 * loads.changeoverSecondsGrouped());
  }

  @ParameterizedTest
  @CsvSource({"150,1", "150,2", "150,3", "400,1", "2000,1"})
  void leavesEveryRigAQuarterOfItsHours(int jobs, long seed) {
    DemoLoads loads = loads(jobs, seed);
    for (Rig rig : loads.rigs()) {
      assertThat(loads.rigBusySeconds(rig.id()) + loads.changeoverSecondsGrouped(rig))
          .as(rig.id())
          .isLessThan((int) (0.75 * loads.rigOpenSeconds(rig)));
    }
  }

  @Test
  void keepsHandsOnAndCaptureTimesOfOneJobSmall() {
    assertThat(loads(150, 1).all())
        .allSatisfy(
            job -> {
              assertThat(job.captureSeconds()).isBetween(50, 600);
              assertThat(job.load().seconds()).isBetween(150, 420);
              assertThat(job.unload().seconds()).isBetween(60, 120);
            })
        .anyMatch(job -> job.load().people() == 2)
        .anyMatch(JobWork::attendedCapture);
  }

  private static DemoLoads loads(int jobs, long seed) {
    return LOADS.computeIfAbsent(
        jobs + " " + seed, key -> new DemoLoads(Demo.batch(jobs, seed, DemoKnobs.DATE)));
  }
}
