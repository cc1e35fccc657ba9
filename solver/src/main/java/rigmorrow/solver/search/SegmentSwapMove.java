package rigmorrow.solver.search;

import java.util.ArrayList;
import java.util.List;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/** Exchanges two stretches of jobs, of one queue or of two. */
final class SegmentSwapMove extends AbstractMove<FloorSchedule> {
  private final RigQueue left;
  private final int leftAt;
  private final int leftCount;
  private final RigQueue right;
  private final int rightAt;
  private final int rightCount;

  /** Within one queue the left stretch must end before the right one starts. */
  SegmentSwapMove(
      RigQueue left, int leftAt, int leftCount, RigQueue right, int rightAt, int rightCount) {
    this.left = left;
    this.leftAt = leftAt;
    this.leftCount = leftCount;
    this.right = right;
    this.rightAt = rightAt;
    this.rightCount = rightCount;
  }

  @Override
  public boolean isMoveDoable(ScoreDirector<FloorSchedule> director) {
    return left != right || leftAt + leftCount <= rightAt;
  }

  @Override
  protected SegmentSwapMove createUndoMove(ScoreDirector<FloorSchedule> director) {
    int rightNow = left == right ? rightAt + rightCount - leftCount : rightAt;
    return new SegmentSwapMove(left, leftAt, rightCount, right, rightNow, leftCount);
  }

  @Override
  protected void doMoveOnGenuineVariables(ScoreDirector<FloorSchedule> director) {
    if (left == right) {
      swapWithin(director);
      return;
    }
    director.beforeListVariableChanged(left, SegmentMove.JOBS, leftAt, leftAt + leftCount);
    director.beforeListVariableChanged(right, SegmentMove.JOBS, rightAt, rightAt + rightCount);
    List<QueuedJob> fromLeft = left.getJobs().subList(leftAt, leftAt + leftCount);
    List<QueuedJob> fromRight = right.getJobs().subList(rightAt, rightAt + rightCount);
    if (leftCount == 1 && rightCount == 1) {
      fromLeft.set(0, fromRight.set(0, fromLeft.get(0)));
    } else {
      List<QueuedJob> kept = new ArrayList<>(fromLeft);
      fromLeft.clear();
      left.getJobs().addAll(leftAt, fromRight);
      fromRight.clear();
      right.getJobs().addAll(rightAt, kept);
    }
    director.afterListVariableChanged(left, SegmentMove.JOBS, leftAt, leftAt + rightCount);
    director.afterListVariableChanged(right, SegmentMove.JOBS, rightAt, rightAt + leftCount);
  }

  private void swapWithin(ScoreDirector<FloorSchedule> director) {
    int end = rightAt + rightCount;
    director.beforeListVariableChanged(left, SegmentMove.JOBS, leftAt, end);
    List<QueuedJob> range = left.getJobs().subList(leftAt, end);
    List<QueuedJob> changed = new ArrayList<>(range.size());
    changed.addAll(range.subList(rightAt - leftAt, end - leftAt));
    changed.addAll(range.subList(leftCount, rightAt - leftAt));
    changed.addAll(range.subList(0, leftCount));
    for (int i = 0; i < changed.size(); i++) {
      range.set(i, changed.get(i));
    }
    director.afterListVariableChanged(left, SegmentMove.JOBS, leftAt, end);
  }

  @Override
  public String toString() {
    return left.rig()
        + "["
        + leftAt
        + "+"
        + leftCount
        + "] with "
        + right.rig()
        + "["
        + rightAt
        + "+"
        + rightCount
        + "]";
  }
}
