package rigmorrow.benchmarks.peer.exact;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.work.JobWork;

/**
 * The crew as numbers: never are more people of a skill at work than there are. Whether the same
 * person can stay with a part to its end is left to the decoder. Weaker than {@link CrewRoster},
 * and many times faster where a day has hundreds of parts.
 */
final class CrewPool {
  private final DayVars day;
  private final CpModel model;
  private final Changeovers changeovers;
  private final int all;
  private final Map<Integer, CumulativeConstraint> pools = new HashMap<>();
  private final List<Demand> demands = new ArrayList<>();
  private final List<IntVar> loads = new ArrayList<>();
  private final List<IntVar> loadEnds = new ArrayList<>();
  private final List<IntVar> unloads = new ArrayList<>();

  /** People of a pool that a part takes, where that depends on what is decided. */
  private record Demand(IntVar people, Map<Literal, Integer> cases) {}

  CrewPool(DayVars day, Changeovers changeovers) {
    this.day = day;
    this.model = day.model;
    this.changeovers = changeovers;
    this.all = (int) ((1L << day.facts.operatorCount()) - 1);
    for (int mask : masks()) {
      pools.put(mask, pool(mask));
    }
    for (int job = 0; job < day.jobs; job++) {
      int at = job;
      IntervalVar changeover =
          model.newIntervalVar(
              day.start[job], day.changeover[job], day.changeoverEnd[job], "changeover" + job);
      pools.forEach((mask, pool) -> changeover(at, mask, pool, changeover));
      IntervalVar load = load(job);
      pools.forEach((mask, pool) -> handsOn(at, JobWork::load, mask, pool, load));
      IntVar seconds = model.newIntVar(0, day.facts.horizon(), "unload" + job);
      unloads.add(seconds);
      IntervalVar unload =
          model.newIntervalVar(day.unloadStart[job], seconds, day.end[job], "unload" + job);
      pools.forEach((mask, pool) -> handsOn(at, JobWork::unload, mask, pool, unload));
    }
  }

  private Set<Integer> masks() {
    Set<Integer> masks = new TreeSet<>(Set.of(all));
    for (int job = 0; job < day.jobs; job++) {
      for (int rig = 0; rig < day.rigs; rig++) {
        if (day.on[job][rig] != null) {
          JobWork work = day.facts.work(job, rig);
          masks.add(day.facts.skilled(work.load().skills()));
          masks.add(day.facts.skilled(work.unload().skills()));
        }
      }
      for (Arc arc : changeovers.arcsTo(job)) {
        masks.add(arc.cost().lead());
      }
    }
    return masks;
  }

  private CumulativeConstraint pool(int mask) {
    CumulativeConstraint pool = model.addCumulative(Integer.bitCount(mask));
    for (int one = 0; one < day.facts.operatorCount(); one++) {
      if ((mask >>> one & 1) != 0) {
        int gone = 0;
        int[] hours = day.facts.operatorHours(one);
        for (int i = 0; i <= hours.length; i += 2) {
          int back = i < hours.length ? hours[i] : day.facts.horizon();
          if (gone < back) {
            pool.addDemand(model.newFixedInterval(gone, (long) back - gone, "away" + one), 1);
          }
          gone = i < hours.length ? hours[i + 1] : gone;
        }
      }
    }
    return pool;
  }

  private int people(int mask, int lead, int people) {
    return mask == all ? people : (lead & ~mask) == 0 ? 1 : 0;
  }

  private void changeover(int job, int mask, CumulativeConstraint pool, IntervalVar part) {
    Map<Literal, Integer> cases = new HashMap<>();
    for (Arc arc : changeovers.arcsTo(job)) {
      if (arc.cost().seconds() > 0) {
        cases.put(arc.taken(), people(mask, arc.cost().lead(), arc.cost().people()));
      }
    }
    for (Extra extra : changeovers.extrasOf(job)) {
      cases.put(extra.done(), people(mask, extra.lead(), extra.people()));
    }
    cases.values().removeIf(people -> people == 0);
    if (cases.isEmpty()) {
      return;
    }
    IntVar people = demand(cases);
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (Arc arc : changeovers.arcsTo(job)) {
      Integer one = cases.get(arc.taken());
      if (one != null) {
        sum.addTerm(arc.taken(), one);
      }
    }
    model.addGreaterOrEqual(people, sum);
    for (Extra extra : changeovers.extrasOf(job)) {
      Integer one = cases.get(extra.done());
      if (one != null) {
        model.addGreaterOrEqual(people, one).onlyEnforceIf(extra.done());
      }
    }
    pool.addDemand(part, people);
  }

  private IntVar demand(Map<Literal, Integer> cases) {
    IntVar people = model.newIntVar(0, 2, "people");
    demands.add(new Demand(people, cases));
    return people;
  }

  private IntervalVar load(int job) {
    boolean stays = true;
    for (int rig = 0; rig < day.rigs; rig++) {
      if (day.on[job][rig] != null) {
        stays &= day.facts.work(job, rig).attendedCapture();
      }
    }
    IntVar seconds = model.newIntVar(0, day.facts.horizon(), "load" + job);
    loads.add(seconds);
    IntVar end =
        stays ? day.captureEnd[job] : model.newIntVar(0, day.facts.horizon(), "loaded" + job);
    loadEnds.add(end);
    if (!stays) {
      model.addEquality(seconds, day.seconds(job, work -> work.load().seconds()));
    }
    return model.newIntervalVar(day.loadStart[job], seconds, end, "load" + job);
  }

  private void handsOn(
      int job,
      Function<JobWork, JobWork.HandsOn> which,
      int mask,
      CumulativeConstraint pool,
      IntervalVar part) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    Map<Literal, Integer> cases = new HashMap<>();
    boolean same = !day.mayLeaveOut;
    for (int rig = 0; rig < day.rigs; rig++) {
      Literal here = day.on[job][rig];
      if (here != null) {
        JobWork.HandsOn one = which.apply(day.facts.work(job, rig));
        int people = people(mask, day.facts.skilled(one.skills()), one.people());
        cases.put(here, people);
        sum.addTerm(here, people);
      }
    }
    same &= cases.values().stream().distinct().count() <= 1;
    int any = cases.values().stream().findFirst().orElse(0);
    if (same) {
      if (any > 0) {
        pool.addDemand(part, any);
      }
      return;
    }
    IntVar people = demand(cases);
    LinearArgument needed = sum;
    model.addEquality(people, needed);
    pool.addDemand(part, people);
  }

  /** Hints at how many people each part takes. */
  void hint(KnownPlan plan, Set<Literal> done) {
    Map<Literal, Boolean> known = new HashMap<>();
    for (int job = 0; job < day.jobs; job++) {
      for (Arc arc : changeovers.arcsTo(job)) {
        known.put(arc.taken(), RigRoutes.in(plan, arc));
      }
      for (int rig = 0; rig < day.rigs; rig++) {
        Literal here = day.on[job][rig];
        if (here != null) {
          known.put(here, plan.rig[job] == rig);
        }
      }
      @Nullable PlannedJob planned = plan.of(job);
      boolean stays = loadEnds.get(job) == day.captureEnd[job];
      int until =
          planned == null ? 0 : stays ? planned.capture().end() : planned.load().span().end();
      model.addHint(loads.get(job), planned == null ? 0 : until - planned.load().span().start());
      if (!stays) {
        model.addHint(loadEnds.get(job), until);
      }
      model.addHint(unloads.get(job), planned == null ? 0 : planned.unload().span().seconds());
    }
    for (Demand demand : demands) {
      int most = 0;
      for (Map.Entry<Literal, Integer> one : demand.cases.entrySet()) {
        boolean is =
            Objects.requireNonNullElse(known.get(one.getKey()), done.contains(one.getKey()));
        most = is ? Math.max(most, one.getValue()) : most;
      }
      model.addHint(demand.people, most);
    }
  }
}
