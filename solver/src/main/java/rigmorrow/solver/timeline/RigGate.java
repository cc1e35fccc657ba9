package rigmorrow.solver.timeline;

/** The rigs' working hours in one decode: a job never straddles a span that closes. */
final class RigGate {
  private final int[][] hours;
  private final int[] span;

  RigGate(CompiledBatch batch, Moment now) {
    this.hours = batch.rigHours;
    this.span = now.rigSpan;
  }

  /** Every rig is before its first span. */
  void open() {
    for (int rig = 0; rig < span.length; rig++) {
      span[rig] = 0;
    }
  }

  /**
   * First second from {@code begin} on at which the rig is open for so long; {@code begin} itself
   * when it is. Later calls for the same rig must not ask for an earlier second.
   */
  int opens(int rig, int begin, int seconds) {
    int[] spans = hours[rig];
    span[rig] = Spans.of(spans, span[rig], begin);
    return Math.max(begin, spans[Spans.openFor(spans, span[rig], begin, seconds)]);
  }

  /** End of the span that the rig was found open in. */
  int closesAt(int rig) {
    return hours[rig][span[rig] + 1];
  }
}
