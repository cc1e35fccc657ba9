package rigmorrow.model.time;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rigmorrow.model.floor.Closure;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;

/** Turns weekly hours, breaks and dated closures into the spans in which work may go on. */
public final class WorkingHours {
  private WorkingHours() {}

  /** When a rig may run, in order, apart, within the plan. */
  public static List<Span> of(Rig rig, PlanClock clock) {
    return open(rig.open(), List.of(), rig.closed(), clock);
  }

  /** When an operator works, in order, apart, within the plan. */
  public static List<Span> of(Operator operator, PlanClock clock) {
    return open(operator.shifts(), operator.breaks(), operator.closed(), clock);
  }

  /** When an operator is there, breaks included, in order, apart, within the plan. */
  public static List<Span> shifts(Operator operator, PlanClock clock) {
    return open(operator.shifts(), List.of(), operator.closed(), clock);
  }

  /** The breaks within an operator's shifts, in order, apart, within the plan. */
  public static List<Span> breaks(Operator operator, PlanClock clock) {
    List<Span> breaks = shifts(operator, clock);
    for (Span worked : of(operator, clock)) {
      breaks = without(breaks, worked);
    }
    return breaks;
  }

  private static List<Span> open(
      List<OpenHours> hours, List<OpenHours> breaks, List<Closure> closed, PlanClock clock) {
    List<Span> shut = new ArrayList<>(weekly(breaks, clock));
    for (Closure closure : closed) {
      int start = clock.secondsAt(closure.from());
      int end = clock.secondsAt(closure.to());
      // A closure that begins within the hour a clock change skips may be over before it begins.
      if (start < end) {
        shut.add(new Span(start, end));
      }
    }
    List<Span> spans = merged(weekly(hours, clock));
    for (Span gap : merged(shut)) {
      spans = without(spans, gap);
    }
    return spans;
  }

  private static List<Span> weekly(List<OpenHours> hours, PlanClock clock) {
    List<Span> spans = new ArrayList<>();
    for (int day = -1; day < clock.days(); day++) {
      LocalDate date = clock.date().plusDays(day);
      for (OpenHours open : hours) {
        if (open.on(date.getDayOfWeek())) {
          LocalDate endDate = open.to().isAfter(open.from()) ? date : date.plusDays(1);
          int start = Math.max(0, clock.secondsAt(date.atTime(open.from())));
          int end = Math.min(clock.horizonSeconds(), clock.secondsAt(endDate.atTime(open.to())));
          if (start < end) {
            spans.add(new Span(start, end));
          }
        }
      }
    }
    return spans;
  }

  private static List<Span> merged(List<Span> spans) {
    List<Span> sorted = new ArrayList<>(spans);
    sorted.sort(Comparator.comparingInt(Span::start).thenComparingInt(Span::end));
    List<Span> merged = new ArrayList<>();
    for (Span span : sorted) {
      int last = merged.size() - 1;
      if (last >= 0 && merged.get(last).end() >= span.start()) {
        Span before = merged.get(last);
        merged.set(last, new Span(before.start(), Math.max(before.end(), span.end())));
      } else {
        merged.add(span);
      }
    }
    return merged;
  }

  private static List<Span> without(List<Span> spans, Span gap) {
    List<Span> left = new ArrayList<>();
    for (Span span : spans) {
      if (!span.overlaps(gap)) {
        left.add(span);
        continue;
      }
      if (span.start() < gap.start()) {
        left.add(new Span(span.start(), gap.start()));
      }
      if (gap.end() < span.end()) {
        left.add(new Span(gap.end(), span.end()));
      }
    }
    return left;
  }
}
