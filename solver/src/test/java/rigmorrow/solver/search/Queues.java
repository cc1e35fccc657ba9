package rigmorrow.solver.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.optaplanner.core.impl.heuristic.move.Move;
import rigmorrow.solver.timeline.CompiledBatch;

/**
 * The job numbers of a schedule at one moment.
 *
 * @param byRig each rig's in order, the backlog's last
 */
record Queues(List<List<Integer>> byRig) {
  static Queues of(FloorSchedule schedule) {
    return new Queues(
        schedule.getQueues().stream()
            .map(queue -> queue.getJobs().stream().map(QueuedJob::number).toList())
            .toList());
  }

  private int rigs() {
    return byRig.size() - 1;
  }

  /** Every job, once or more, in order of its number. */
  List<Integer> jobs() {
    return byRig.stream().flatMap(List::stream).sorted().toList();
  }

  List<String> misfits(CompiledBatch batch) {
    List<String> misfits = new ArrayList<>();
    for (int rig = 0; rig < rigs(); rig++) {
      for (int job : byRig.get(rig)) {
        if (!batch.fits(job, rig)) {
          misfits.add(batch.jobId(job) + " on rig " + rig);
        }
      }
    }
    return misfits;
  }

  /** The frozen jobs of each rig in order. */
  List<List<Integer>> fronts(CompiledBatch batch) {
    List<List<Integer>> fronts = new ArrayList<>();
    for (int rig = 0; rig < rigs(); rig++) {
      List<Integer> queue = byRig.get(rig);
      fronts.add(queue.subList(0, Math.min(batch.frozen(rig), queue.size())));
    }
    return fronts;
  }

  Set<Integer> pinnedInBacklog(CompiledBatch batch) {
    Set<Integer> pinned = new TreeSet<>(byRig.get(rigs()));
    pinned.removeIf(job -> batch.pinnedRig(job) < 0);
    return pinned;
  }

  /** In words, what a move did to these queues. */
  String kind(Move<FloorSchedule> move, Queues after) {
    String name = move.getClass().getSimpleName();
    List<Integer> changed = new ArrayList<>();
    for (int queue = 0; queue <= rigs(); queue++) {
      if (!byRig.get(queue).equals(after.byRig.get(queue))) {
        changed.add(queue);
      }
    }
    if (changed.size() == 1) {
      return name + " within";
    }
    if (changed.contains(rigs())) {
      int more = after.byRig.get(rigs()).size() - byRig.get(rigs()).size();
      return name + (more > 0 ? " to backlog" : more < 0 ? " from backlog" : " with backlog");
    }
    int first = changed.get(0);
    int most = Math.max(gone(first, after), after.gone(first, this));
    return name + (most > 1 ? " of several between" : " between");
  }

  private int gone(int queue, Queues after) {
    List<Integer> gone = new ArrayList<>(byRig.get(queue));
    gone.removeAll(after.byRig.get(queue));
    return gone.size();
  }
}
