package rigmorrow.app.runsheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.runsheet.text.TimeText;
import rigmorrow.model.floor.Closure;
import rigmorrow.model.time.Span;

/**
 * Puts a day's entries in order of time, with its working hours, breaks and closures as remarks,
 * and a remark for every gap within working hours that is worth one.
 */
final class DayLines<T> {

  /** Shorter gaps are the ordinary wait for the next hand. */
  static final int LONGEST_SILENT_GAP_SECONDS = 300;

  private static final int SHORTEST_TOLD_WAIT_SECONDS = 60;

  private final TimeText times;
  private final String opens;
  private final String closes;
  private final String idle;
  private final List<Event<T>> events = new ArrayList<>();
  private final List<Waiting> waits = new ArrayList<>();

  /**
   * One line of a day: something to do, or a remark such as a break or a gap.
   *
   * @param entry what to do; null for a remark
   * @param remark empty for something to do
   * @param warning true for a remark that somebody can be hurt by passing over
   */
  record Line<T>(@Nullable T entry, String remark, boolean warning) {}

  /** What an event says of the working hours, in the order in which equal times are told. */
  private enum Kind {
    CLOSES,
    OPENS,
    BUSY
  }

  private record Event<T>(
      Kind kind, Span span, @Nullable T entry, String remark, boolean warning) {}

  private record Waiting(List<Span> spans, String what) {}

  /**
   * @param opens how a span of working hours begins, such as "Shift starts"
   * @param closes how it ends
   * @param idle what a gap is called
   */
  DayLines(TimeText times, String opens, String closes, String idle) {
    this.times = times;
    this.opens = opens;
    this.closes = closes;
    this.idle = idle;
  }

  void workingHours(List<Span> spans) {
    for (Span span : spans) {
      events.add(at(Kind.OPENS, span.start(), opens));
      events.add(at(Kind.CLOSES, span.end(), closes));
    }
  }

  private Event<T> at(Kind kind, int seconds, String what) {
    return new Event<>(
        kind, new Span(seconds, seconds), null, what + " " + times.at(seconds), false);
  }

  void closures(List<Closure> closures) {
    for (Closure closure : closures) {
      Span closed = times.span(closure);
      if (closed.overlaps(times.plan())) {
        remark("Closed", closed, closure.reason());
      }
    }
  }

  void remark(String what, Span span, String why) {
    String text = what + " " + times.span(span) + (why.isEmpty() ? "" : ": " + why);
    events.add(new Event<>(Kind.BUSY, span, null, text, false));
  }

  /** A remark that stands out and shares its line with no other. */
  void warning(String what, Span span, String why) {
    events.add(
        new Event<>(Kind.BUSY, span, null, what + " " + times.span(span) + ": " + why, true));
  }

  /** What is waited for at some times; told with the gaps in them: nothing else is done there. */
  void waiting(List<Span> spans, String what) {
    waits.add(new Waiting(spans, what));
  }

  void entry(Span span, T entry) {
    events.add(new Event<>(Kind.BUSY, span, entry, "", false));
  }

  List<Line<T>> lines() {
    events.sort(
        Comparator.<Event<T>>comparingInt(event -> event.span.start())
            .thenComparing(event -> event.kind)
            .thenComparingInt(event -> event.span.end()));
    List<Line<T>> lines = new ArrayList<>();
    List<String> remarks = new ArrayList<>();
    boolean open = false;
    int busyUntil = 0;
    for (Event<T> event : events) {
      if (open && event.span.start() - busyUntil > LONGEST_SILENT_GAP_SECONDS) {
        remarks.add(gap(new Span(busyUntil, event.span.start())));
      }
      busyUntil = Math.max(busyUntil, event.span.end());
      if (event.kind != Kind.BUSY) {
        open = event.kind == Kind.OPENS;
      }
      if (event.warning) {
        flush(remarks, lines);
        lines.add(new Line<>(null, event.remark, true));
      } else if (event.entry == null) {
        remarks.add(event.remark);
      } else {
        flush(remarks, lines);
        lines.add(new Line<>(event.entry, "", false));
      }
    }
    flush(remarks, lines);
    return lines;
  }

  private String gap(Span gap) {
    List<String> reasons = new ArrayList<>();
    for (Waiting waiting : waits) {
      List<Span> parts = new ArrayList<>();
      for (Span span : waiting.spans) {
        int start = Math.max(gap.start(), span.start());
        int end = Math.min(gap.end(), span.end());
        if (end - start >= SHORTEST_TOLD_WAIT_SECONDS) {
          parts.add(new Span(start, end));
        }
      }
      if (!parts.isEmpty()) {
        String when = String.join(" and ", parts.stream().map(times::span).toList()) + " ";
        reasons.add("waits " + (parts.contains(gap) ? "" : when) + "for " + waiting.what);
      }
    }
    return idle
        + " "
        + times.span(gap)
        + " ("
        + TimeText.beside(gap)
        + ")"
        + (reasons.isEmpty() ? "" : ": " + String.join(", ", reasons));
  }

  /** Remarks that follow each other share a line. */
  private static <T> void flush(List<String> remarks, List<Line<T>> lines) {
    if (!remarks.isEmpty()) {
      lines.add(new Line<>(null, String.join("; ", remarks), false));
      remarks.clear();
    }
  }
}
