package rigmorrow.benchmarks.peer.exact;

import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;

/**
 * The sequence of each rig as a circuit over all jobs that fit it: every job after every other, a
 * job that is not there as a loop. A job starts after the one before it has ended, and lies within
 * one span of the rig's hours.
 */
final class RigRoutes {
  final List<Arc> arcs = new ArrayList<>();
  final List<SetupCosts> costs;
  private final Map<Integer, Literal> unused = new HashMap<>();
  private final Map<List<Integer>, Literal> last = new HashMap<>();
  private final Map<List<Integer>, IntVar> places = new HashMap<>();

  private final DayVars day;
  private final CpModel model;

  RigRoutes(DayVars day) {
    this.costs = SetupCosts.ofAll(day.facts);
    this.day = day;
    this.model = day.model;
    for (int rig = 0; rig < day.rigs; rig++) {
      if (!day.fitting.get(rig).isEmpty()) {
        circuit(rig);
        hours(rig);
        places(rig);
      }
    }
  }

  private void circuit(int rig) {
    List<Integer> jobs = day.fitting.get(rig);
    CircuitConstraint circuit = model.addCircuit();
    Literal none = model.newBoolVar("unused" + rig);
    unused.put(rig, none);
    circuit.addArc(0, 0, none);
    for (int at = 0; at < jobs.size(); at++) {
      int job = jobs.get(at);
      Literal here = here(job, rig);
      circuit.addArc(at + 1, at + 1, here.not());
      model.addImplication(here, none.not());
      circuit.addArc(0, at + 1, arc(rig, SetupCosts.INITIAL, job).taken());
      Literal end = model.newBoolVar("last" + rig + "_" + job);
      last.put(List.of(rig, job), end);
      circuit.addArc(at + 1, 0, end);
      for (int next = 0; next < jobs.size(); next++) {
        if (next != at) {
          Arc arc = arc(rig, job, jobs.get(next));
          circuit.addArc(at + 1, next + 1, arc.taken());
          model.addGreaterOrEqual(day.start[arc.to()], day.end[job]).onlyEnforceIf(arc.taken());
        }
      }
    }
  }

  private Literal here(int job, int rig) {
    return Objects.requireNonNull(day.on[job][rig]);
  }

  private Arc arc(int rig, int from, int to) {
    Literal taken = model.newBoolVar("arc" + rig + "_" + from + "_" + to);
    Arc arc = new Arc(rig, from, to, taken, costs.get(rig).between(from, to));
    arcs.add(arc);
    return arc;
  }

  private void hours(int rig) {
    int[] hours = day.facts.rigHours(rig);
    List<IntervalVar> taken = new ArrayList<>();
    int shut = 0;
    for (int i = 0; i < hours.length; i += 2) {
      close(taken, shut, hours[i]);
      shut = hours[i + 1];
    }
    close(taken, shut, day.facts.horizon());
    for (int job : day.fitting.get(rig)) {
      taken.add(
          model.newOptionalIntervalVar(
              day.start[job], day.whole[job], day.end[job], here(job, rig), "whole" + job));
    }
    model.addNoOverlap(taken);
  }

  private void close(List<IntervalVar> taken, int from, int to) {
    if (from < to) {
      taken.add(model.newFixedInterval(from, (long) to - from, "shut" + from));
    }
  }

  /** Where jobs are held in a place, the place of every job on the rig is counted. */
  private void places(int rig) {
    List<Integer> jobs = day.fitting.get(rig);
    if (jobs.stream().noneMatch(job -> day.batch.pinnedPlace(job) >= 0)) {
      return;
    }
    for (int job : jobs) {
      IntVar place = model.newIntVar(0, jobs.size() - 1L, "place" + job);
      places.put(List.of(rig, job), place);
      if (day.batch.pinnedPlace(job) >= 0) {
        model.addEquality(place, day.batch.pinnedPlace(job)).onlyEnforceIf(here(job, rig));
      }
    }
    for (Arc arc : arcs) {
      if (arc.rig() == rig) {
        IntVar place = Objects.requireNonNull(places.get(List.of(rig, arc.to())));
        IntVar before = places.get(List.of(rig, arc.from()));
        LinearExpr next = before == null ? LinearExpr.constant(0) : LinearExpr.affine(before, 1, 1);
        model.addEquality(place, next).onlyEnforceIf(arc.taken());
      }
    }
  }

  /** True when a plan has the two jobs of an arc follow each other. */
  static boolean in(KnownPlan plan, Arc arc) {
    return plan.rig[arc.to()] == arc.rig() && plan.before[arc.to()] == arc.from();
  }

  void hint(KnownPlan plan) {
    for (Arc arc : arcs) {
      model.addHint(arc.taken(), in(plan, arc));
    }
    unused.forEach((rig, none) -> model.addHint(none, plan.byRig.get(rig).isEmpty()));
    last.forEach(
        (key, end) -> {
          List<Integer> sequence = plan.byRig.get(key.get(0));
          int at = sequence.indexOf(key.get(1));
          model.addHint(end, at >= 0 && at == sequence.size() - 1);
        });
    places.forEach(
        (key, place) ->
            model.addHint(place, Math.max(0, plan.byRig.get(key.get(0)).indexOf(key.get(1)))));
  }

  /** Job numbers of each rig in order, in a solution. */
  List<List<Integer>> sequences(Predicate<Literal> isTrue) {
    int[] on = new int[day.jobs];
    Arrays.fill(on, KnownPlan.NONE);
    List<List<Integer>> sequences = new ArrayList<>();
    for (int rig = 0; rig < day.rigs; rig++) {
      sequences.add(new ArrayList<>());
      for (int job : day.fitting.get(rig)) {
        on[job] = isTrue.test(here(job, rig)) ? rig : on[job];
      }
    }
    int[][] next = new int[day.rigs][day.jobs + 1];
    for (int[] row : next) {
      Arrays.fill(row, KnownPlan.NONE);
    }
    for (Arc arc : arcs) {
      int from = arc.from();
      boolean both =
          on[arc.to()] == arc.rig() && (from == SetupCosts.INITIAL || on[from] == arc.rig());
      if (both && isTrue.test(arc.taken())) {
        next[arc.rig()][from + 1] = arc.to();
      }
    }
    for (int rig = 0; rig < day.rigs; rig++) {
      for (int job = next[rig][0]; job != KnownPlan.NONE; job = next[rig][job + 1]) {
        sequences.get(rig).add(job);
      }
    }
    return sequences;
  }

  /** What makes the sequences of a solution what they are: who follows whom and who is last. */
  List<Literal> decided(Predicate<Literal> isTrue) {
    List<Literal> decided = new ArrayList<>();
    arcs.stream().map(Arc::taken).filter(isTrue).forEach(decided::add);
    last.values().stream().filter(isTrue).forEach(decided::add);
    return decided;
  }
}
