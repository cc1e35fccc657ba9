package rigmorrow.model.money;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;
import rigmorrow.model.time.WorkingHours;

/**
 * What one operator is paid for in a plan. Overtime is what is worked in addition to the hours of a
 * normal period (ILO, Resolution concerning Statistics of Hours of Work, 1962, paragraph 5), and as
 * in that resolution time spent at the workplace waiting counts as worked.
 *
 * @param operator id
 * @param handsOnSeconds of all tasks
 * @param regularSeconds paid at the usual rate
 * @param overtimeSeconds paid at the rate for overtime
 */
public record CrewHours(
    String operator, long handsOnSeconds, long regularSeconds, long overtimeSeconds) {

  /**
   * The hours of everybody, in crew order.
   *
   * @param plan a plan of that crew
   * @param crew as it works
   * @param regularCrew the same people with their regular hours
   */
  public static List<CrewHours> of(
      Plan plan, List<Operator> crew, List<Operator> regularCrew, CrewPay pay) {
    Map<String, List<Span>> tasks = tasks(plan);
    Map<String, Operator> regular = new HashMap<>();
    regularCrew.forEach(operator -> regular.put(operator.id(), operator));
    PlanClock clock = new PlanClock(plan.zone(), plan.date(), plan.days());
    List<CrewHours> all = new ArrayList<>();
    for (Operator operator : crew) {
      List<Span> normal = WorkingHours.of(regular.getOrDefault(operator.id(), operator), clock);
      List<Span> done = tasks.getOrDefault(operator.id(), List.of());
      all.add(
          pay == CrewPay.HANDS_ON
              ? handsOn(operator.id(), done, normal)
              : presence(operator.id(), done, normal, WorkingHours.of(operator, clock)));
    }
    return all;
  }

  private static CrewHours handsOn(String operator, List<Span> done, List<Span> normal) {
    long all = seconds(done);
    long within = 0;
    for (Span task : done) {
      for (Span hours : normal) {
        within +=
            Math.max(0, Math.min(task.end(), hours.end()) - Math.max(task.start(), hours.start()));
      }
    }
    return new CrewHours(operator, all, within, all - within);
  }

  /**
   * Who works longer stays from the end of the shift to the end of the last task, or comes early.
   */
  private static CrewHours presence(
      String operator, List<Span> done, List<Span> normal, List<Span> worked) {
    long overtime = 0;
    for (Span hours : worked) {
      for (Span extra : without(hours, normal)) {
        int first = Integer.MAX_VALUE;
        int last = Integer.MIN_VALUE;
        for (Span task : done) {
          if (task.overlaps(extra)) {
            first = Math.min(first, Math.max(task.start(), extra.start()));
            last = Math.max(last, Math.min(task.end(), extra.end()));
          }
        }
        if (first < last) {
          boolean after = normal.stream().anyMatch(span -> span.end() == extra.start());
          boolean before = normal.stream().anyMatch(span -> span.start() == extra.end());
          overtime += (before ? extra.end() : last) - (after ? extra.start() : first);
        }
      }
    }
    return new CrewHours(operator, seconds(done), seconds(normal), overtime);
  }

  private static List<Span> without(Span hours, List<Span> gaps) {
    List<Span> left = new ArrayList<>();
    int from = hours.start();
    for (Span gap : gaps) {
      if (gap.overlaps(hours)) {
        if (gap.start() > from) {
          left.add(new Span(from, gap.start()));
        }
        from = Math.max(from, gap.end());
      }
    }
    if (from < hours.end()) {
      left.add(new Span(from, hours.end()));
    }
    return left;
  }

  /** Every task of everybody. */
  public static Map<String, List<Span>> tasks(Plan plan) {
    Map<String, List<Span>> tasks = new HashMap<>();
    for (RigPlan rig : plan.rigs()) {
      for (PlannedJob job : rig.jobs()) {
        if (job.changeover() != null) {
          add(tasks, job.changeover().operators(), job.changeover().span());
        }
        add(tasks, job.load().operators(), job.load().span());
        add(tasks, job.captureOperators(), job.capture());
        add(tasks, job.unload().operators(), job.unload().span());
      }
    }
    return tasks;
  }

  private static void add(Map<String, List<Span>> tasks, List<String> operators, Span span) {
    operators.forEach(
        operator -> tasks.computeIfAbsent(operator, id -> new ArrayList<>()).add(span));
  }

  private static long seconds(List<Span> spans) {
    return spans.stream().mapToLong(Span::seconds).sum();
  }
}
