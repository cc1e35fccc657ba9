package rigmorrow.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.plan.PlanFigures;

/** How far a plan is from the best possible at most, in words. */
public final class BoundText {
  private BoundText() {}

  /**
   * One sentence for all points and each part of them, and one for the jobs left out, if any.
   *
   * @param figures what the plan comes to
   * @param bounds what no plan can be below that leaves out no more
   * @param heldBack how many jobs the planner leaves out by hand: no plan has them, whatever it
   *     does
   */
  public static String of(PlanFigures figures, PlanBounds bounds, int heldBack) {
    List<String> parts = new ArrayList<>();
    part(parts, "lateness", figures.latenessPoints(), bounds.latenessPoints());
    part(parts, "changeovers", figures.changeoverPoints(), bounds.changeoverPoints());
    part(parts, "finishing", figures.finishingPoints(), bounds.finishingPoints());
    String all = "Points: " + above(figures.softPoints(), bounds.softPoints());
    String text = parts.isEmpty() ? all : all + " (" + String.join("; ", parts) + ")";
    if (figures.leftOutPoints() == 0) {
      return text + ".";
    }
    long value = figures.leftOutPoints();
    String held =
        heldBack == 0 ? "" : " while " + Counted.of(heldBack, "job is", "jobs are") + " held back";
    String left =
        value == bounds.leftOutPoints()
            ? "the least possible"
            : above(value, bounds.leftOutPoints());
    return text + ", among plans that leave out no more. Left out: " + left + held + ".";
  }

  private static void part(List<String> parts, String name, long value, long bound) {
    if (value > 0) {
      parts.add(name + " " + shortly(value, bound));
    }
  }

  private static String above(long value, long bound) {
    OptionalLong percent = PlanBounds.percentAbove(value, bound);
    if (value == bound) {
      return "the best possible";
    }
    return percent.isPresent()
        ? "at most " + percent.getAsLong() + " % above the best possible"
        : "how far from the best possible is not known";
  }

  private static String shortly(long value, long bound) {
    OptionalLong percent = PlanBounds.percentAbove(value, bound);
    return value == bound
        ? "the best possible"
        : percent.isPresent() ? percent.getAsLong() + " %" : "not known";
  }
}
