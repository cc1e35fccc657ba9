package rigmorrow.benchmarks.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rigmorrow.benchmarks.compare.Interval;
import rigmorrow.benchmarks.compare.PeerSummary;
import rigmorrow.benchmarks.compare.Results;
import rigmorrow.benchmarks.run.Cell;

/** Numbers and facts in the words that all forms of the report share. */
final class Texts {
  private static final String NONE = "-";

  private Texts() {}

  static String percent(@Nullable Double value) {
    return value == null ? NONE : String.format(Locale.ROOT, "%,.2f", value);
  }

  static String percent(OptionalDouble value) {
    return percent(value.isEmpty() ? null : value.getAsDouble());
  }

  static String ratio(double value) {
    return String.format(Locale.ROOT, "%.3f", value);
  }

  static String ratio(@Nullable Interval interval) {
    return interval == null ? NONE : ratio(interval.mean());
  }

  static String range(@Nullable Interval interval) {
    return interval == null ? NONE : ratio(interval.low()) + " to " + ratio(interval.high());
  }

  /** What was run, in one sentence. */
  static String run(Results results) {
    return String.format(
        Locale.ROOT,
        "%s, %s, %s: %,d plans, each %s on %s.",
        counted(results.instances().size(), "instance"),
        counted((int) results.cells().stream().mapToLong(Cell::seed).distinct().count(), "seed"),
        counted(results.peers().size(), "peer"),
        results.cells().size(),
        effort(results),
        span(results, cell -> cell.effort().cores(), "core"));
  }

  private static String effort(Results results) {
    if (results.cells().stream().anyMatch(cell -> cell.effort().steps() > 0)) {
      long steps =
          results.cells().stream().mapToLong(cell -> cell.effort().steps()).max().orElse(0);
      return String.format(Locale.ROOT, "of %,d decodes a search", steps);
    }
    double least = seconds(results, true);
    double most = seconds(results, false);
    return least == most
        ? String.format(Locale.ROOT, "within %s s", plain(most))
        : String.format(Locale.ROOT, "within %s to %s s", plain(least), plain(most));
  }

  private static double seconds(Results results, boolean least) {
    var limits = results.cells().stream().mapToLong(cell -> cell.effort().limitMillis());
    return (least ? limits.min() : limits.max()).orElse(0) / 1000.0;
  }

  /** What must be known before any number is read. */
  static List<String> warnings(List<PeerSummary> summaries) {
    List<String> warnings = new ArrayList<>();
    for (PeerSummary one : summaries) {
      if (one.unworkable() > 0) {
        warnings.add(
            "UNWORKABLE: " + counted(one.unworkable(), "plan") + " of " + one.peer() + ".");
      }
      if (one.overTime() > 0) {
        warnings.add("OVER TIME: " + counted(one.overTime(), "plan") + " of " + one.peer() + ".");
      }
    }
    return warnings;
  }

  /** A number without needless noughts. */
  static String plain(double value) {
    return String.format(Locale.ROOT, "%.3f", value).replaceAll("\\.?0+$", "");
  }

  private static String span(Results results, ToIntFunction<Cell> what, String noun) {
    return results.cells().stream()
        .mapToInt(what)
        .distinct()
        .sorted()
        .mapToObj(count -> counted(count, noun))
        .collect(Collectors.joining(" or "));
  }

  static String counted(int count, String noun) {
    return String.format(Locale.ROOT, "%,d %s%s", count, noun, count == 1 ? "" : "s");
  }
}
