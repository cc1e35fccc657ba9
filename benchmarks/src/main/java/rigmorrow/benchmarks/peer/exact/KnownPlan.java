package rigmorrow.benchmarks.peer.exact;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.solver.timeline.BatchFacts;

/** A decoded plan by the numbers of jobs, rigs and operators, to hint the solver at. */
final class KnownPlan {
  static final int NONE = -1;

  /** Job numbers of each rig in order. */
  final List<List<Integer>> byRig = new ArrayList<>();

  /** Rig of each job, or {@link #NONE}. */
  final int[] rig;

  /** The job before it on its rig, or {@link #NONE} for the first and for what is left out. */
  final int[] before;

  private final @Nullable PlannedJob[] planned;
  private final Map<String, Integer> operators = new HashMap<>();

  KnownPlan(BatchFacts facts, Plan plan) {
    int jobs = facts.batch().jobCount();
    this.rig = new int[jobs];
    this.before = new int[jobs];
    this.planned = new PlannedJob[jobs];
    java.util.Arrays.fill(rig, NONE);
    java.util.Arrays.fill(before, NONE);
    Map<String, Integer> numbers = new HashMap<>();
    for (int job = 0; job < jobs; job++) {
      numbers.put(facts.batch().jobId(job), job);
    }
    for (int r = 0; r < plan.rigs().size(); r++) {
      List<Integer> sequence = new ArrayList<>();
      for (PlannedJob one : plan.rigs().get(r).jobs()) {
        int job = numbers.getOrDefault(one.job(), NONE);
        before[job] = sequence.isEmpty() ? NONE : sequence.get(sequence.size() - 1);
        rig[job] = r;
        planned[job] = one;
        sequence.add(job);
      }
      byRig.add(sequence);
    }
    for (int one = 0; one < facts.operatorCount(); one++) {
      Operator operator = facts.operator(one);
      operators.put(operator.id(), one);
    }
  }

  /** The job as planned, or null when it is left out. */
  @Nullable PlannedJob of(int job) {
    return planned[job];
  }

  /** Numbers of those who do a part, the one in charge first. */
  List<Integer> who(@Nullable Attended part) {
    List<Integer> who = new ArrayList<>();
    if (part != null) {
      part.operators().forEach(id -> who.add(operators.getOrDefault(id, NONE)));
    }
    return who;
  }
}
