package rigmorrow.solver.timeline;

/** Leaves out what breaks hard rules, until nothing does. */
public final class Repair {
  private final CompiledBatch batch;
  private final Timeline timeline;

  /**
   * @param batch that is planned
   * @param timeline whose sequences are mended in place
   */
  public Repair(CompiledBatch batch, Timeline timeline) {
    this.batch = batch;
    this.timeline = timeline;
  }

  /**
   * Takes the first offender of each rig out and decodes again, until the plan is workable or only
   * pinned jobs offend.
   */
  public Sequences untilWorkable() {
    timeline.decode();
    boolean dropped = true;
    while (timeline.hard() > 0 && dropped) {
      Trace trace = timeline.trace();
      dropped = false;
      for (int rig = 0; rig < batch.rigCount(); rig++) {
        dropped |= dropFirst(rig, trace);
      }
      timeline.decode();
    }
    return Sequences.of(batch, timeline);
  }

  private boolean dropFirst(int rig, Trace trace) {
    int[] sequence = timeline.sequence(rig);
    int length = timeline.length(rig);
    for (int at = 0; at < length; at++) {
      if (offends(sequence[at], rig, trace)) {
        int out = at;
        while (out >= 0 && batch.pinRig[sequence[out]] >= 0) {
          out--;
        }
        if (out < 0) {
          continue;
        }
        System.arraycopy(sequence, out + 1, sequence, out, length - out - 1);
        timeline.setLength(rig, length - 1);
        return true;
      }
    }
    return false;
  }

  private boolean offends(int job, int rig, Trace trace) {
    int at = (job * batch.rigCount() + rig) * CompiledBatch.WORK_STRIDE;
    int end = trace.unloadEnd[job];
    int begin = trace.changeoverStart[job] >= 0 ? trace.changeoverStart[job] : trace.loadStart[job];
    return end > batch.leave[job]
        || end > batch.horizon
        || end > trace.closesAt[job]
        || (batch.must[job] && trace.captureEnd[job] > batch.due[job])
        || begin > batch.work[at + CompiledBatch.PIN_START]
        || !batch.fits(job, rig);
  }
}
