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
import rigmorrow.model.time.Span;

/**
 * What a plan costs, in the currency of its floor. What is the same for every plan (rent, the rigs
 * that are there) is no part of it.
 *
 * @param regular operators' regular hours
 * @param overtime operators' overtime, with its factor
 * @param rigs hours in which a rig runs: it is changed over, warms up, is loaded, captures or is
 *     unloaded; waiting for people or kit costs nothing, or a floor with fewer rigs would look
 *     cheaper for having fewer that wait
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
    long running = 0;
    long late = 0;
    for (RigPlan rig : plan.rigs()) {
      for (PlannedJob job : rig.jobs()) {
        running += runningSeconds(job);
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
        hours(running) * costs.rigPerHour(),
        hours(late) * costs.latePerHour(),
        leftOut * costs.leftOutPerJob());
  }

  /** Seconds in which something is done at the rig; loading may go on during the warm-up. */
  static long runningSeconds(PlannedJob job) {
    int free = job.whole().start();
    long running = 0;
    int warmed = Math.min(job.warmedUpAt(), job.capture().start());
    Span first = job.changeover() == null ? null : job.changeover().span();
    List<Span> parts =
        first == null
            ? List.of(job.load().span(), job.capture(), job.unload().span())
            : List.of(
                new Span(first.start(), Math.max(first.end(), warmed)),
                job.load().span(),
                job.capture(),
                job.unload().span());
    for (Span part : parts) {
      running += Math.max(0, part.end() - Math.max(free, part.start()));
      free = Math.max(free, part.end());
    }
    return running;
  }

  /** All of it. */
  public double total() {
    return regular + overtime + rigs + lateness + leftOut;
  }

  private static double hours(long seconds) {
    return seconds / SECONDS_PER_HOUR;
  }
}
