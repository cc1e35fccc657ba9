package rigmorrow.solver.timeline;

/**
 * Working hours as start, end, start, end ... in seconds, with one span at the end that never
 * closes.
 */
final class Spans {
  private Spans() {}

  /** Where the span begins that a second is in or before, looked for from an earlier span on. */
  static int of(int[] spans, int from, int second) {
    int at = from;
    while (spans[at + 1] <= second && at + 2 < spans.length) {
      at += 2;
    }
    return at;
  }

  /** The first span from {@code from} on that is open for so long from {@code begin} on. */
  static int openFor(int[] spans, int from, int begin, int seconds) {
    int at = from;
    while (spans[at + 1] - Math.max(begin, spans[at]) < seconds) {
      at += 2;
    }
    return at;
  }
}
