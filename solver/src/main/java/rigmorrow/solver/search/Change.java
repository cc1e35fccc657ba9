package rigmorrow.solver.search;

/**
 * Two stretches of jobs that change places, of one queue or of two; either may be empty, so that
 * putting jobs somewhere else is a change too. Within one queue the left stretch ends before the
 * right one starts. One object is used again and again.
 */
final class Change {
  int left;
  int leftAt;
  int leftCount;
  int right;
  int rightAt;
  int rightCount;

  /** The two stretches; within one queue in whichever order. */
  void set(int left, int leftAt, int leftCount, int right, int rightAt, int rightCount) {
    boolean ordered = left != right || leftAt <= rightAt;
    this.left = left;
    this.leftAt = ordered ? leftAt : rightAt;
    this.leftCount = ordered ? leftCount : rightCount;
    this.right = right;
    this.rightAt = ordered ? rightAt : leftAt;
    this.rightCount = ordered ? rightCount : leftCount;
  }

  /** Makes this the change that undoes it. */
  void turnRound() {
    if (left == right) {
      rightAt += rightCount - leftCount;
    }
    int count = leftCount;
    leftCount = rightCount;
    rightCount = count;
  }

  @Override
  public String toString() {
    return left
        + "["
        + leftAt
        + "+"
        + leftCount
        + "] with "
        + right
        + "["
        + rightAt
        + "+"
        + rightCount
        + "]";
  }
}
