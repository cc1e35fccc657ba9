package rigmorrow.solver.search;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;

/** Tears a plan apart: leaves out many of its jobs, which the search then puts back elsewhere. */
final class Ruin {
  private static final double LEAST = 0.3;

  private Ruin() {}

  /** The plan without three tenths to all of the jobs that are not pinned; its score is unknown. */
  static Sequences of(Sequences plan, CompiledBatch batch, SplittableRandom random) {
    double share = LEAST + (1 - LEAST) * random.nextDouble();
    List<List<Integer>> byRig = new ArrayList<>();
    List<Integer> backlog = new ArrayList<>(plan.backlog());
    long medium = plan.medium();
    for (List<Integer> rig : plan.byRig()) {
      List<Integer> kept = new ArrayList<>();
      for (int job : rig) {
        if (batch.pinnedRig(job) < 0 && random.nextDouble() < share) {
          backlog.add(job);
          medium += batch.leftOutWeight(job);
        } else {
          kept.add(job);
        }
      }
      byRig.add(kept);
    }
    return new Sequences(byRig, backlog, 0, medium, 0);
  }
}
