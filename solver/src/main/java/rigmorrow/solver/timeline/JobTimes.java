package rigmorrow.solver.timeline;

/** When each job of one decode is captured and off its rig, in seconds. */
final class JobTimes {
  final int[] captureEnd;
  final int[] end;

  JobTimes(CompiledBatch batch) {
    captureEnd = new int[batch.jobCount()];
    end = new int[batch.jobCount()];
  }

  /** Becomes as those of another decode of the same batch. */
  void copy(JobTimes other) {
    System.arraycopy(other.captureEnd, 0, captureEnd, 0, captureEnd.length);
    System.arraycopy(other.end, 0, end, 0, end.length);
  }
}
