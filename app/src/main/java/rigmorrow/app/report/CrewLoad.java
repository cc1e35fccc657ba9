package rigmorrow.app.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;
import rigmorrow.model.time.WorkingHours;

/**
 * How busy a plan keeps one operator.
 *
 * @param operator id
 * @param name what people call them
 * @param handsOnSeconds of changeovers, loading, attended capture and unloading, 0 or more
 * @param shiftSeconds within shifts and outside breaks on the planned days, 0 or more
 */
public record CrewLoad(String operator, String name, long handsOnSeconds, long shiftSeconds) {

  /** The loads of the whole crew, in floor order. */
  public static List<CrewLoad> of(Batch batch, Plan plan) {
    Map<String, Long> seconds = new HashMap<>();
    for (RigPlan rig : plan.rigs()) {
      rig.jobs().forEach(job -> add(seconds, job));
    }
    PlanClock clock = new PlanClock(plan.zone(), plan.date(), plan.days());
    List<CrewLoad> loads = new ArrayList<>();
    for (Operator operator : batch.floor().crew()) {
      long shift = WorkingHours.of(operator, clock).stream().mapToLong(Span::seconds).sum();
      long busy = seconds.getOrDefault(operator.id(), 0L);
      loads.add(new CrewLoad(operator.id(), operator.name(), busy, shift));
    }
    return loads;
  }

  /** Hands-on time as a share of the shift; 0 for somebody who is not there. */
  public double share() {
    return shiftSeconds == 0 ? 0 : handsOnSeconds / (double) shiftSeconds;
  }

  private static void add(Map<String, Long> seconds, PlannedJob job) {
    if (job.changeover() != null) {
      add(seconds, job.changeover().operators(), job.changeover().span());
    }
    add(seconds, job.load().operators(), job.load().span());
    add(seconds, job.captureOperators(), job.capture());
    add(seconds, job.unload().operators(), job.unload().span());
  }

  private static void add(Map<String, Long> seconds, List<String> operators, Span span) {
    operators.forEach(operator -> seconds.merge(operator, (long) span.seconds(), Long::sum));
  }
}
