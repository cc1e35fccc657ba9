package rigmorrow.model.use;

import java.util.List;
import rigmorrow.model.check.Require;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;
import rigmorrow.model.time.WorkingHours;

/**
 * What the time of one rig goes into, by the time elements and indicators of ISO 22400-2:2014
 * (Automation systems and integration: key performance indicators for manufacturing operations
 * management). The standard measures what happened; here the same is worked out for what is
 * planned. Its text is not public: names and formulas are taken from N. Kang, C. Zhao, J. Li, J. A.
 * Horst, A hierarchical structure of key performance indicators, International Journal of
 * Production Research 54(21), 2016, and from the ontology of the standard that Helmut Schmidt
 * University published (hsu-aut, ISO22400-2, 2.0.0). Both agree.
 *
 * <p>Loading, aligning, unloading and waiting belong to neither setup nor production: within the
 * busy time they are what the standard calls delay.
 *
 * @param rig id of the rig
 * @param plannedBusySeconds PBT, planned busy time: operation time less planned downtime; the rig's
 *     open hours within the plan, less its dated closures
 * @param unitBusySeconds AUBT, actual unit busy time: the unit is used for orders; from each job's
 *     first step to the end of its unloading
 * @param unitSetupSeconds AUST, actual unit setup time: the unit is prepared for an order; from the
 *     start of each changeover to the end of its warm-up
 * @param productionSeconds APT, actual production time: only what adds value; capture
 */
public record RigUse(
    String rig,
    long plannedBusySeconds,
    long unitBusySeconds,
    long unitSetupSeconds,
    long productionSeconds) {
  private static final double PERCENT = 100;

  public RigUse {
    Require.text("rigUse.rig", rig);
    Require.that(plannedBusySeconds >= 0, "rigUse.pbt", plannedBusySeconds, "0 or more");
    Require.that(unitSetupSeconds >= 0, "rigUse.aust", unitSetupSeconds, "0 or more");
    Require.that(productionSeconds >= 0, "rigUse.apt", productionSeconds, "0 or more");
    Require.that(
        unitBusySeconds >= unitSetupSeconds + productionSeconds,
        "rigUse.aubt",
        unitBusySeconds,
        "at least setup and production together");
  }

  /**
   * The use of a rig.
   *
   * @param jobs that it does, in order, not overlapping
   */
  public static RigUse of(Rig rig, List<PlannedJob> jobs, PlanClock clock) {
    long busy = 0;
    long setup = 0;
    long production = 0;
    for (PlannedJob job : jobs) {
      busy += job.whole().seconds();
      production += job.capture().seconds();
      if (job.changeover() != null) {
        // A warm-up that goes on into capture is an error of the plan, and not to be counted twice.
        int ready = Math.min(job.warmedUpAt(), job.capture().start());
        setup += Math.max(0, ready - job.changeover().span().start());
      }
    }
    long open = WorkingHours.of(rig, clock).stream().mapToLong(Span::seconds).sum();
    return new RigUse(rig.id(), open, busy, setup, production);
  }

  /**
   * AE, allocation efficiency: AUBT / PBT. More than 100 only where a plan works outside of hours.
   *
   * @return in per cent; 0 for a rig that is never open
   */
  public double allocationEfficiencyPercent() {
    return percent(unitBusySeconds, plannedBusySeconds);
  }

  /**
   * UE, utilisation efficiency: APT / AUBT.
   *
   * @return in per cent, 0 to 100; 0 for a rig that does nothing
   */
  public double utilisationEfficiencyPercent() {
    return percent(productionSeconds, unitBusySeconds);
  }

  /**
   * SeR, setup ratio: AUST / AUPT, where AUPT, the actual unit processing time, is APT + AUST.
   *
   * @return in per cent, 0 to 100; 0 for a rig that does nothing
   */
  public double setupRatioPercent() {
    return percent(unitSetupSeconds, productionSeconds + unitSetupSeconds);
  }

  private static double percent(long part, long whole) {
    return whole == 0 ? 0 : PERCENT * part / whole;
  }
}
