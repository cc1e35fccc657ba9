package rigmorrow.model.verify;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import java.util.TreeSet;
import rigmorrow.model.floor.Closure;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;

/**
 * Whether a rig or an operator is at work at a given second, read straight from the weekly hours,
 * breaks and closures. Seconds before the plan's first day are never open.
 */
final class OpenTime {
  private final List<OpenHours> hours;
  private final List<OpenHours> breaks;
  private final List<Closure> closed;
  private final PlanClock clock;

  private OpenTime(
      List<OpenHours> hours, List<OpenHours> breaks, List<Closure> closed, PlanClock clock) {
    this.hours = hours;
    this.breaks = breaks;
    this.closed = closed;
    this.clock = clock;
  }

  static OpenTime of(Rig rig, PlanClock clock) {
    return new OpenTime(rig.open(), List.of(), rig.closed(), clock);
  }

  static OpenTime of(Operator operator, PlanClock clock) {
    return new OpenTime(operator.shifts(), operator.breaks(), operator.closed(), clock);
  }

  boolean openAt(int second) {
    return second >= 0
        && within(hours, second)
        && !within(breaks, second)
        && closed.stream().noneMatch(closure -> within(closure, second));
  }

  /** How many seconds of the span are not open. */
  int closedSeconds(Span span) {
    if (span.seconds() == 0) {
      return 0;
    }
    // Nothing opens or closes between two neighbouring boundaries.
    TreeSet<Integer> cuts = new TreeSet<>(boundaries(span.start(), span.end()));
    cuts.add(span.start());
    int sum = 0;
    for (int from : cuts) {
      Integer next = cuts.higher(from);
      int to = next == null ? span.end() : next;
      sum += openAt(from) ? 0 : to - from;
    }
    return sum;
  }

  /** The first open second of the plan, if there is one. */
  OptionalInt firstOpening() {
    TreeSet<Integer> candidates = boundaries(0, clock.horizonSeconds());
    candidates.add(0);
    return candidates.stream().mapToInt(Integer::intValue).filter(this::openAt).findFirst();
  }

  private boolean within(List<OpenHours> weekly, int second) {
    LocalDate today = clock.at(second).toLocalDate();
    return within(weekly, today.minusDays(1), second) || within(weekly, today, second);
  }

  private boolean within(List<OpenHours> weekly, LocalDate day, int second) {
    return weekly.stream()
        .filter(open -> open.on(day.getDayOfWeek()))
        .anyMatch(open -> start(open, day) <= second && second < end(open, day));
  }

  private boolean within(Closure closure, int second) {
    return clock.secondsAt(closure.from()) <= second && second < clock.secondsAt(closure.to());
  }

  private int start(OpenHours open, LocalDate day) {
    return clock.secondsAt(day.atTime(open.from()));
  }

  private int end(OpenHours open, LocalDate day) {
    boolean sameDay = open.to().isAfter(open.from());
    return clock.secondsAt((sameDay ? day : day.plusDays(1)).atTime(open.to()));
  }

  /** Every second from {@code from} to before {@code to} at which anything may begin or end. */
  private TreeSet<Integer> boundaries(int from, int to) {
    TreeSet<Integer> all = new TreeSet<>();
    LocalDate last = clock.at(to).toLocalDate();
    for (LocalDate day = clock.at(from).toLocalDate().minusDays(1);
        !day.isAfter(last);
        day = day.plusDays(1)) {
      for (List<OpenHours> weekly : List.of(hours, breaks)) {
        for (OpenHours open : weekly) {
          all.add(start(open, day));
          all.add(end(open, day));
        }
      }
    }
    for (Closure closure : closed) {
      all.add(clock.secondsAt(closure.from()));
      all.add(clock.secondsAt(closure.to()));
    }
    all.add(0);
    return new TreeSet<>(all.headSet(to).tailSet(from));
  }
}
