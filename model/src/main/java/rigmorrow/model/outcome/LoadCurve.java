package rigmorrow.model.outcome;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.model.check.Require;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;

/**
 * How many are busy over the day: for each half hour of local time the seconds of all of them
 * together, summed over the days.
 *
 * @param busySeconds {@link #PARTS} of them, each 0 or more
 */
public record LoadCurve(List<Long> busySeconds) {
  /** Half hours of a day. */
  public static final int PARTS = 48;

  /** Length of a part. */
  public static final int PART_SECONDS = 1800;

  public LoadCurve {
    busySeconds = List.copyOf(busySeconds);
    Require.that(
        busySeconds.size() == PARTS, "loadCurve.size", busySeconds.size(), PARTS + " parts");
    Require.that(
        busySeconds.stream().noneMatch(seconds -> seconds < 0),
        "loadCurve",
        busySeconds,
        "0 or more");
  }

  /** The curve of spans in which one of them is busy. */
  public static LoadCurve of(Iterable<Span> spans, PlanClock clock) {
    long[] busy = new long[PARTS];
    for (Span span : spans) {
      int at = span.start();
      while (at < span.end()) {
        int second = clock.at(at).toLocalTime().toSecondOfDay();
        int end = Math.min(span.end(), at + PART_SECONDS - second % PART_SECONDS);
        busy[second / PART_SECONDS] += end - at;
        at = end;
      }
    }
    List<Long> parts = new ArrayList<>();
    for (long seconds : busy) {
      parts.add(seconds);
    }
    return new LoadCurve(parts);
  }

  /** How many are busy in a part of the day, averaged over it and over so many days. */
  public double mean(int part, int days) {
    return busySeconds.get(part) / (double) PART_SECONDS / days;
  }
}
