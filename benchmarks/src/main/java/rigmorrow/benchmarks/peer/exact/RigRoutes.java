package rigmorrow.benchmarks.peer.exact;

import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;

/**
 * The sequence of each rig as a circuit over all jobs that fit it: every job after every other, a
 * job that is not there as a loop. A job starts after the one before it has ended, and lies within
 * one span of the rig's hours.
 */
final class RigRoutes {
  final List<Arc> arcs = new ArrayList<>();
  final List<SetupCosts> costs = new ArrayList<>();

  private final DayVars day;
  private final CpModel model;

  RigRoutes(DayVars day) {
    this.day = day;
    this.model = day.model;
    for (int rig = 0; rig < day.rigs; rig++) {
      costs.add(new SetupCosts(day.facts, rig));
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
    Literal empty = model.newBoolVar("empty" + rig);
    circuit.addArc(0, 0, empty);
    for (int at = 0; at < jobs.size(); at++) {
      int job = jobs.get(at);
      Literal here = here(job, rig);
      circuit.addArc(at + 1, at + 1, here.not());
      model.addImplication(here, empty.not());
      circuit.addArc(0, at + 1, arc(rig, SetupCosts.INITIAL, job).taken());
      circuit.addArc(at + 1, 0, model.newBoolVar("last" + rig + "_" + job));
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
    IntVar[] place = new IntVar[day.jobs];
    for (int job : jobs) {
      place[job] = model.newIntVar(0, jobs.size() - 1L, "place" + job);
      if (day.batch.pinnedPlace(job) >= 0) {
        model.addEquality(place[job], day.batch.pinnedPlace(job));
      }
    }
    for (Arc arc : arcs) {
      if (arc.rig() == rig) {
        LinearExpr here = LinearExpr.affine(place[arc.to()], 1, 0);
        if (arc.from() == SetupCosts.INITIAL) {
          model.addEquality(here, 0).onlyEnforceIf(arc.taken());
        } else {
          model
              .addEquality(here, LinearExpr.affine(place[arc.from()], 1, 1))
              .onlyEnforceIf(arc.taken());
        }
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
}
