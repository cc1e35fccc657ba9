package rigmorrow.model.verify;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;

/** Collects breaches and words their times. */
final class BreachLog {
  private static final DateTimeFormatter LOCAL =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT);

  private final PlanClock clock;
  private final List<Breach> breaches = new ArrayList<>();

  BreachLog(PlanClock clock) {
    this.clock = clock;
  }

  /** Notes a breach; an amount of 0 or less means that the rule is kept. */
  void add(FloorRule rule, String where, long amount, String sentence) {
    if (amount > 0) {
      breaches.add(new Breach(rule, where, amount, sentence));
    }
  }

  /** The same; the sentence is worded only when the rule is broken, which most are not. */
  void add(FloorRule rule, String where, long amount, Supplier<String> sentence) {
    if (amount > 0) {
      add(rule, where, amount, sentence.get());
    }
  }

  List<Breach> breaches() {
    return List.copyOf(breaches);
  }

  PlanClock clock() {
    return clock;
  }

  /** Floor time of a second. */
  String time(int second) {
    return LOCAL.format(clock.at(second));
  }

  /** Floor times of a span. */
  String times(Span span) {
    return time(span.start()) + " to " + time(span.end());
  }
}
