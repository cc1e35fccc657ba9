package rigmorrow.model.money;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.model.floor.Costs;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/**
 * What a plan costs, in the currency of its floor. What is the same for every plan (rent, the rigs
 * that are there) is no part of it.
 *
 * @param regular operators' regular hours
 * @param overtime operators' overtime, with its factor
 * @param rigs hours in which a rig is taken by a job, from its first step to the end of unloading
 * @param lateness hours after promises, times the job's weight
 * @param leftOut jobs that are not done, times their weight
 */
public record DayCost(
    double regular, double overtime, double rigs, double lateness, double leftOut) {
  private static final double SECONDS_PER_HOUR = 3600;

  /**
   * The cost of a plan.
   *
   * @param list that was planned
   * @param crew hours of everybody
   */
  public static DayCost of(Plan plan, ShotList list, List<CrewHours> crew, Costs costs) {
    long regular = crew.stream().mapToLong(CrewHours::regularSeconds).sum();
    long overtime = crew.stream().mapToLong(CrewHours::overtimeSeconds).sum();
    Map<String, Integer> weights = new HashMap<>();
    list.jobs().forEach((ShotJob job) -> weights.put(job.id(), job.weight()));
    long taken = 0;
    long late = 0;
    for (RigPlan rig : plan.rigs()) {
      for (PlannedJob job : rig.jobs()) {
        taken += job.whole().seconds();
        late += (long) job.lateSeconds() * weights.getOrDefault(job.job(), 1);
      }
    }
    long leftOut = 0;
    for (LeftOut left : plan.leftOut()) {
      leftOut += weights.getOrDefault(left.job(), 1);
    }
    return new DayCost(
        hours(regular) * costs.operatorPerHour(),
        hours(overtime) * costs.operatorPerHour() * costs.overtimeFactor(),
        hours(taken) * costs.rigPerHour(),
        hours(late) * costs.latePerHour(),
        leftOut * costs.leftOutPerJob());
  }

  /** All of it. */
  public double total() {
    return regular + overtime + rigs + lateness + leftOut;
  }

  private static double hours(long seconds) {
    return seconds / SECONDS_PER_HOUR;
  }
}
