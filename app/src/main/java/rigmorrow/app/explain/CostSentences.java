package rigmorrow.app.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rigmorrow.app.report.Counted;
import rigmorrow.app.report.Durations;
import rigmorrow.app.report.Times;
import rigmorrow.model.explain.Cost;
import rigmorrow.model.explain.Standing;
import rigmorrow.model.plan.PlanFigures;

/** Says how the cost of one plan stands against another's. */
final class CostSentences {
  private static final double SIXTY = 60;

  private CostSentences() {}

  /** Better, worse or equal, with the figure that decides. */
  static String standing(Cost now, Cost then) {
    return standing(now, then, points(Math.abs(then.softSixtieths() - now.softSixtieths())));
  }

  /** The same where the figures of both plans are shown: the points are those that differ there. */
  static String standing(Cost now, Cost then, PlanFigures before, PlanFigures after) {
    return standing(now, then, Math.abs(after.softPoints() - before.softPoints()));
  }

  private static String standing(Cost now, Cost then, long points) {
    Standing standing = then.against(now);
    if (standing == Standing.EQUAL) {
      return "Costs the same";
    }
    String word = standing == Standing.BETTER ? "Better" : "Worse";
    if (then.hard() != now.hard()) {
      return word
          + (then.hard() > now.hard()
              ? ": it breaks rules that must hold"
              : ": fewer rules that must hold are broken");
    }
    if (then.leftOutWeight() != now.leftOutWeight()) {
      long weight = Math.abs(then.leftOutWeight() - now.leftOutWeight());
      return word
          + " by "
          + weight
          + " of the weight left out"
          + (then.softSixtieths() == now.softSixtieths() ? "" : ", though " + points(now, then));
    }
    return word + " by " + amount(points);
  }

  /** What the whole plan would cost, for the end of a sentence. */
  static String inShort(Cost now, Cost then) {
    List<String> parts = new ArrayList<>();
    if (then.hard() != now.hard()) {
      parts.add(
          then.hard() > now.hard()
              ? "break rules that must hold"
              : "break fewer rules that must hold");
    }
    if (then.leftOutWeight() != now.leftOutWeight()) {
      parts.add("leave out " + signed(then.leftOutWeight() - now.leftOutWeight()) + " weight");
    }
    parts.add("cost " + points(now, then));
    return "the plan would " + String.join(" and ", parts);
  }

  private static String points(Cost now, Cost then) {
    long difference = then.softSixtieths() - now.softSixtieths();
    return difference == 0
        ? "the same points"
        : amount(points(Math.abs(difference))) + (difference > 0 ? " more" : " fewer");
  }

  /**
   * The figures that move, but for the job's own.
   *
   * @param own seconds by which the job itself is later
   */
  static List<String> moved(Cost now, Cost then, int own, Times times) {
    List<String> moved = new ArrayList<>();
    if (then.lateJobs() != now.lateJobs()) {
      moved.add(Counted.of(then.lateJobs(), "job") + " late instead of " + now.lateJobs());
    }
    if (then.lateSeconds() - now.lateSeconds() != own) {
      moved.add(allLateness(now, then));
    }
    long changeover = then.changeoverSeconds() - now.changeoverSeconds();
    if (changeover != 0) {
      moved.add("changeovers " + Durations.of(Math.abs(changeover)) + moreOrLess(changeover));
    }
    int finished = then.finishedAtSecond() - now.finishedAtSecond();
    if (finished != 0) {
      moved.add(
          "the last job done "
              + times.at(then.finishedAtSecond())
              + ", "
              + Durations.of(Math.abs(finished))
              + (finished > 0 ? " later" : " sooner"));
    }
    return moved;
  }

  private static String allLateness(Cost now, Cost then) {
    String before = lateness(now);
    String after = lateness(then);
    return before.equals(after)
        ? "all lateness less than 1 min" + moreOrLess(then.lateSeconds() - now.lateSeconds())
        : "all lateness " + after + " instead of " + before;
  }

  private static String moreOrLess(long difference) {
    return difference > 0 ? " more" : " less";
  }

  private static String lateness(Cost cost) {
    String weighted =
        cost.lateWeightedSeconds() == cost.lateSeconds()
            ? ""
            : " (" + Durations.late(cost.lateWeightedSeconds()) + " weighted)";
    return Durations.late(cost.lateSeconds()) + weighted;
  }

  private static String signed(long number) {
    return number > 0 ? number + " more" : -number + " less";
  }

  /** Sixtieths of a point as whole points. */
  private static long points(long sixtieths) {
    return Math.round(sixtieths / SIXTY);
  }

  private static String amount(long points) {
    String number = String.format(Locale.ROOT, "%,d", points);
    return points == 0 ? "less than 1 point" : number + (points == 1 ? " point" : " points");
  }
}
