package rigmorrow.model.outcome;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.model.change.ScenarioBatch;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.money.CrewHours;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.money.DayCost;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;
import rigmorrow.model.use.RigUse;
import rigmorrow.model.verify.PlanChecker;

/**
 * What a plan of a batch comes to, in the figures a manager compares.
 *
 * @param days of the batch, at least 1
 * @param planned jobs with times
 * @param leftOut jobs that are not done
 * @param promises jobs with a promise
 * @param kept promises that are kept; a job left out keeps none
 * @param lateSeconds after promises, times each job's weight
 * @param finishedSeconds local time at which the last job ends, from midnight of the first day; 0
 *     without jobs
 * @param changeoverSeconds hands-on
 * @param crew hours of the whole crew
 * @param rigs time of all rigs
 * @param cost money
 * @param breaches of hard rules; 0 for a workable plan
 * @param rigLoad how many rigs are taken over the day
 * @param crewLoad how many operators are at work over the day
 */
public record Outcome(
    int days,
    int planned,
    int leftOut,
    int promises,
    int kept,
    long lateSeconds,
    long finishedSeconds,
    long changeoverSeconds,
    CrewTime crew,
    RigTime rigs,
    DayCost cost,
    int breaches,
    LoadCurve rigLoad,
    LoadCurve crewLoad) {
  private static final double PERCENT = 100;

  /**
   * Hours of the whole crew.
   *
   * @param handsOnSeconds of all tasks
   * @param regularSeconds paid at the usual rate
   * @param overtimeSeconds paid as overtime
   */
  public record CrewTime(long handsOnSeconds, long regularSeconds, long overtimeSeconds) {
    /** Hands-on time in per cent of what is paid for; 0 where nothing is. */
    public double usePercent() {
      long paid = regularSeconds + overtimeSeconds;
      return paid == 0 ? 0 : PERCENT * handsOnSeconds / paid;
    }
  }

  /**
   * Time of all rigs, by the time elements of {@link RigUse}.
   *
   * @param plannedBusySeconds PBT, open hours
   * @param unitBusySeconds AUBT, taken by jobs
   * @param productionSeconds APT, capture
   */
  public record RigTime(long plannedBusySeconds, long unitBusySeconds, long productionSeconds) {
    /** AE, allocation efficiency of ISO 22400-2, AUBT / PBT, in per cent. */
    public double allocationPercent() {
      return plannedBusySeconds == 0 ? 0 : PERCENT * unitBusySeconds / plannedBusySeconds;
    }

    /** UE, utilisation efficiency of ISO 22400-2, APT / AUBT, in per cent. */
    public double utilisationPercent() {
      return unitBusySeconds == 0 ? 0 : PERCENT * productionSeconds / unitBusySeconds;
    }
  }

  /** What a plan comes to; it is held against every rule. */
  public static Outcome of(ScenarioBatch scenario, Plan plan, CrewPay pay) {
    PlanClock clock = PlanClock.of(scenario.batch());
    List<CrewHours> crew =
        CrewHours.of(plan, scenario.batch().floor().crew(), scenario.regularCrew(), pay);
    Map<String, PlannedJob> planned = new HashMap<>();
    List<Span> taken = new ArrayList<>();
    for (RigPlan rig : plan.rigs()) {
      for (PlannedJob job : rig.jobs()) {
        planned.put(job.job(), job);
        taken.add(job.whole());
      }
    }
    int promises = 0;
    int kept = 0;
    long late = 0;
    for (ShotJob job : scenario.batch().shotList().jobs()) {
      PlannedJob done = planned.get(job.id());
      if (job.promise() != null) {
        promises++;
        kept += done != null && done.lateSeconds() == 0 ? 1 : 0;
      }
      late += done == null ? 0 : (long) done.lateSeconds() * job.weight();
    }
    List<Span> tasks = CrewHours.tasks(plan).values().stream().flatMap(List::stream).toList();
    return new Outcome(
        plan.days(),
        planned.size(),
        plan.leftOut().size(),
        promises,
        kept,
        late,
        planned.isEmpty() ? 0 : local(plan.figures().finishedAt(), clock),
        plan.figures().changeoverSeconds(),
        crewTime(crew),
        rigTime(scenario, plan, clock),
        DayCost.of(plan, scenario.batch().shotList(), crew, scenario.batch().floor().costs()),
        PlanChecker.check(scenario.batch(), plan).size(),
        LoadCurve.of(taken, clock),
        LoadCurve.of(tasks, clock));
  }

  /** Promises kept in per cent; 100 where there were none. */
  public double keptPercent() {
    return promises == 0 ? PERCENT : PERCENT * kept / promises;
  }

  private static long local(int second, PlanClock clock) {
    LocalDateTime first = clock.date().atStartOfDay();
    return Duration.between(first, clock.at(second).toLocalDateTime()).toSeconds();
  }

  private static CrewTime crewTime(List<CrewHours> crew) {
    return new CrewTime(
        crew.stream().mapToLong(CrewHours::handsOnSeconds).sum(),
        crew.stream().mapToLong(CrewHours::regularSeconds).sum(),
        crew.stream().mapToLong(CrewHours::overtimeSeconds).sum());
  }

  private static RigTime rigTime(ScenarioBatch scenario, Plan plan, PlanClock clock) {
    long planned = 0;
    long busy = 0;
    long production = 0;
    for (RigPlan one : plan.rigs()) {
      Rig rig = scenario.batch().floor().rig(one.rig()).orElseThrow();
      RigUse use = RigUse.of(rig, one.jobs(), clock);
      planned += use.plannedBusySeconds();
      busy += use.unitBusySeconds();
      production += use.productionSeconds();
    }
    return new RigTime(planned, busy, production);
  }
}
