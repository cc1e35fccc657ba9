package rigmorrow.solver.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/** Takes jobs that follow each other out of one queue and puts them into another, or elsewhere. */
final class SegmentMove extends AbstractMove<FloorSchedule> {
  static final String JOBS = "jobs";

  private final RigQueue from;
  private final int at;
  private final int count;
  private final RigQueue to;
  private final int target;

  /**
   * @param at first job taken
   * @param count how many, at least 1
   * @param target where they stand afterwards, counted with them taken out
   */
  SegmentMove(RigQueue from, int at, int count, RigQueue to, int target) {
    this.from = from;
    this.at = at;
    this.count = count;
    this.to = to;
    this.target = target;
  }

  @Override
  public boolean isMoveDoable(ScoreDirector<FloorSchedule> director) {
    return from != to || at != target;
  }

  @Override
  protected SegmentMove createUndoMove(ScoreDirector<FloorSchedule> director) {
    return new SegmentMove(to, target, count, from, at);
  }

  @Override
  protected void doMoveOnGenuineVariables(ScoreDirector<FloorSchedule> director) {
    if (from == to) {
      shift(director);
      return;
    }
    director.beforeListVariableChanged(from, JOBS, at, at + count);
    director.beforeListVariableChanged(to, JOBS, target, target);
    List<QueuedJob> segment = from.getJobs().subList(at, at + count);
    if (count == 1) {
      to.getJobs().add(target, segment.get(0));
    } else {
      to.getJobs().addAll(target, new ArrayList<>(segment));
    }
    segment.clear();
    director.afterListVariableChanged(from, JOBS, at, at);
    director.afterListVariableChanged(to, JOBS, target, target + count);
  }

  private void shift(ScoreDirector<FloorSchedule> director) {
    int low = Math.min(at, target);
    int high = Math.max(at, target) + count;
    director.beforeListVariableChanged(from, JOBS, low, high);
    List<QueuedJob> range = from.getJobs().subList(low, high);
    Collections.rotate(range, at < target ? -count : count);
    director.afterListVariableChanged(from, JOBS, low, high);
  }

  @Override
  public String toString() {
    return count + " from " + from.rig() + "[" + at + "] to " + to.rig() + "[" + target + "]";
  }
}
