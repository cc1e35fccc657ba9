package rigmorrow.app.board.make;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.app.board.view.BoardView.LoadView;
import rigmorrow.app.board.view.BoardView.OperatorView;

/** How busy the whole crew is, quarter of an hour by quarter of an hour. */
final class CrewHours {
  private static final int BIN_SECONDS = 900;
  private static final double TENTHS = 10;

  private final long[] busy;
  private final long[] there;
  private final int horizonSeconds;

  private CrewHours(int horizonSeconds) {
    this.horizonSeconds = horizonSeconds;
    int bins = (horizonSeconds + BIN_SECONDS - 1) / BIN_SECONDS;
    this.busy = new long[bins];
    this.there = new long[bins];
  }

  /**
   * Stretches in which somebody is there or at work, in order; what lies outside the plan is left
   * out.
   */
  static List<LoadView> of(List<OperatorView> crew, int horizonSeconds) {
    CrewHours hours = new CrewHours(horizonSeconds);
    for (OperatorView operator : crew) {
      operator.shifts().forEach(span -> hours.add(hours.there, span.start(), span.end()));
      operator.tasks().forEach(task -> hours.add(hours.busy, task.start(), task.end()));
    }
    return hours.views();
  }

  private void add(long[] bins, int from, int to) {
    int start = Math.max(0, from);
    int end = Math.min(horizonSeconds, to);
    for (int at = start; at < end; ) {
      int bin = at / BIN_SECONDS;
      int next = Math.min(end, (bin + 1) * BIN_SECONDS);
      bins[bin] += next - at;
      at = next;
    }
  }

  private List<LoadView> views() {
    List<LoadView> views = new ArrayList<>();
    for (int bin = 0; bin < busy.length; bin++) {
      if (busy[bin] > 0 || there[bin] > 0) {
        int start = bin * BIN_SECONDS;
        int end = Math.min(horizonSeconds, start + BIN_SECONDS);
        views.add(
            new LoadView(start, end, mean(busy[bin], end - start), mean(there[bin], end - start)));
      }
    }
    return views;
  }

  private static double mean(long seconds, int length) {
    return Math.round(TENTHS * seconds / length) / TENTHS;
  }
}
