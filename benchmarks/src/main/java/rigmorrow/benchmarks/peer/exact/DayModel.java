package rigmorrow.benchmarks.peer.exact;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.floor.Weights;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.solver.timeline.BatchFacts;
import rigmorrow.solver.timeline.Sequences;

/**
 * The whole day as one model: every plan that the decoder can make is a solution, at no more than
 * what it costs. The other way round a solution may use people as no queue would; so what counts is
 * what the decoder makes of its sequences.
 */
public final class DayModel {
  private final DayVars day;
  private final CpModel model;
  private final RigRoutes routes;
  private final KeptValues kept;
  private final KitRoutes kits;
  private final RingWear rings;
  private final Changeovers changeovers;
  private final CrewRoster crew;
  private final IntVar finished;
  private final List<IntVar> late = new ArrayList<>();
  private final Weights weights;
  private final long leftOutFactor;
  private final LinearExprBuilder cost;

  /**
   * @param facts of the batch to plan
   * @param mostLeftOut no more than this weight may be left out
   */
  public DayModel(BatchFacts facts, long mostLeftOut) {
    this.day = new DayVars(facts, mostLeftOut > 0);
    this.model = day.model;
    this.weights = facts.floor().weights();
    this.routes = new RigRoutes(day);
    this.kept = new KeptValues(day, routes);
    this.kits = new KitRoutes(day);
    this.rings = new RingWear(day, routes);
    List<Extra> extras = new ArrayList<>(kept.extras);
    extras.addAll(kits.extras);
    extras.addAll(rings.extras);
    this.changeovers = new Changeovers(day, routes, extras);
    this.crew = new CrewRoster(day, changeovers);
    this.finished = model.newIntVar(facts.firstOpening(), facts.horizon(), "finished");
    samples();
    alike();
    promises();
    fill();
    this.leftOutFactor = mostLeftOut == 0 ? 0 : beyondAnySoft();
    model.addLessOrEqual(leftOut(1), mostLeftOut);
    this.cost = cost();
    model.minimize(cost);
  }

  /** The model for the solver. */
  public CpModel model() {
    return model;
  }

  /** Number of pairs of jobs that may follow each other, on all rigs. */
  int arcs() {
    return routes.arcs.size();
  }

  private void samples() {
    for (int sample = 0; ; sample++) {
      List<IntervalVar> uses = new ArrayList<>();
      for (int job = 0; job < day.jobs; job++) {
        if (day.facts.sample(job) == sample) {
          uses.add(
              model.newOptionalIntervalVar(
                  day.start[job], day.whole[job], day.end[job], day.out[job].not(), "sample"));
        }
      }
      if (uses.isEmpty()) {
        return;
      }
      model.addNoOverlap(uses);
    }
  }

  /** Of jobs that are alike the first are planned, in order of time. */
  private void alike() {
    for (int job = 0; job < day.jobs; job++) {
      int next = nextAlike(job);
      if (next != KnownPlan.NONE) {
        model.addImplication(day.out[job], day.out[next]);
        model.addLessOrEqual(day.start[job], day.start[next]).onlyEnforceIf(day.out[next].not());
      }
    }
  }

  private int nextAlike(int job) {
    for (int next = job + 1; next < day.jobs; next++) {
      if (day.facts.alike(job, next)) {
        return next;
      }
    }
    return KnownPlan.NONE;
  }

  private void promises() {
    for (int job = 0; job < day.jobs; job++) {
      int due = day.batch.due(job);
      IntVar seconds = model.newIntVar(0, day.facts.horizon(), "late" + job);
      late.add(seconds);
      if (due < day.facts.horizon()) {
        model
            .addGreaterOrEqual(seconds, LinearExpr.affine(day.captureEnd[job], 1, -due))
            .onlyEnforceIf(day.out[job].not());
      }
      model.addGreaterOrEqual(finished, day.end[job]).onlyEnforceIf(day.out[job].not());
    }
  }

  /** What is on a rig does not fit into less time than it takes, even without a pause. */
  private void fill() {
    for (int rig = 0; rig < day.rigs; rig++) {
      int[] hours = day.facts.rigHours(rig);
      if (hours.length == 0) {
        continue;
      }
      LinearExprBuilder sum = LinearExpr.newBuilder();
      for (int job : day.fitting.get(rig)) {
        sum.addTerm(Objects.requireNonNull(day.on[job][rig]), day.batch.plainSeconds(job, rig));
      }
      for (Arc arc : routes.arcs) {
        if (arc.rig() == rig) {
          sum.addTerm(arc.taken(), arc.cost().seconds());
        }
      }
      int from = Math.min(hours[0], day.facts.firstOpening());
      model.addLessOrEqual(sum, LinearExpr.affine(finished, 1, -from));
    }
  }

  private LinearExprBuilder cost() {
    LinearExprBuilder cost = leftOut(leftOutFactor);
    for (int job = 0; job < day.jobs; job++) {
      cost.addTerm(late.get(job), (long) day.batch.weight(job) * weights.latenessPerMinute());
      cost.addTerm(day.changeover[job], weights.changeoverPerMinute());
    }
    cost.addTerm(finished, weights.finishingPerMinute());
    cost.add(-(long) day.facts.firstOpening() * weights.finishingPerMinute());
    return cost;
  }

  private LinearExprBuilder leftOut(long factor) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (int job = 0; job < day.jobs; job++) {
      sum.addTerm(day.out[job], factor * day.batch.leftOutWeight(job));
    }
    return sum;
  }

  /** More than the soft part of any plan, so that leaving out always counts first. */
  private long beyondAnySoft() {
    long most = 1 + (long) day.facts.horizon() * weights.finishingPerMinute();
    for (int job = 0; job < day.jobs; job++) {
      long late = Math.max(0, day.facts.horizon() - day.batch.due(job));
      most += late * day.batch.weight(job) * weights.latenessPerMinute();
    }
    return most + (long) day.rigs * day.facts.horizon() * weights.changeoverPerMinute();
  }

  /** Hints at a decoded plan, which is a solution of the model. */
  public void hint(Plan decoded) {
    KnownPlan plan = new KnownPlan(day.facts, decoded);
    day.hint(plan);
    routes.hint(plan);
    Set<Literal> done = new HashSet<>(kept.hint(plan));
    done.addAll(kits.hint(plan));
    done.addAll(rings.hint(plan));
    changeovers.hint(plan, done);
    crew.hint(plan);
    for (int job = 0; job < day.jobs; job++) {
      @Nullable PlannedJob planned = plan.of(job);
      model.addHint(late.get(job), planned == null ? 0 : planned.lateSeconds());
    }
    model.addHint(finished, Math.max(day.facts.firstOpening(), decoded.figures().finishedAt()));
  }

  /** Job numbers of each rig in order, in a solution. */
  public List<List<Integer>> sequences(Predicate<Literal> isTrue) {
    return routes.sequences(isTrue);
  }

  /** What makes the sequences of a solution what they are. */
  List<Literal> decided(Predicate<Literal> isTrue) {
    return routes.decided(isTrue);
  }

  /**
   * Leaves only what the model takes to be better than a decoded plan, without what was decoded.
   */
  void onlyBetterThan(Sequences best, List<List<Literal>> decoded) {
    for (List<Literal> decided : decoded) {
      model.addBoolOr(decided.stream().map(Literal::not).toList());
    }
    model.addLessOrEqual(cost, leftOutFactor * best.medium() + best.soft() - 1);
    model.clearHints();
  }
}
