package rigmorrow.app.report;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.plan.PlanFigures;

/** How far a plan is from the best possible at most, in words. */
public final class BoundText {
  private BoundText() {}

  /**
   * One sentence for all soft points and each part of them, and one for the jobs left out, if any.
   *
   * @param figures what the plan comes to
   * @param bounds what no plan can be below that leaves out no more
   */
  public static String of(PlanFigures figures, PlanBounds bounds) {
    List<String> parts = new ArrayList<>();
    part(parts, "late", figures.latenessPoints(), bounds.latenessPoints());
    part(parts, "changeover", figures.changeoverPoints(), bounds.changeoverPoints());
    part(parts, "finishing", figures.finishingPoints(), bounds.finishingPoints());
    String all = "Soft points: " + above(figures.softPoints(), bounds.softPoints());
    String text = parts.isEmpty() ? all : all + " (" + String.join("; ", parts) + ")";
    if (figures.leftOutPoints() == 0) {
      return text + ".";
    }
    return text
        + ", among plans that leave out no more. Left out: "
        + above(figures.leftOutPoints(), bounds.leftOutPoints())
        + ".";
  }

  private static void part(List<String> parts, String name, long value, long bound) {
    if (value > 0) {
      parts.add(name + " " + shortly(value, bound));
    }
  }

  private static String above(long value, long bound) {
    String percent = shortly(value, bound);
    return percent.endsWith("%") ? "at most " + percent + " above the best possible" : percent;
  }

  private static String shortly(long value, long bound) {
    if (value == bound) {
      return "the best possible";
    }
    var percent = PlanBounds.percentAbove(value, bound);
    return percent.isPresent() ? percent.getAsLong() + " %" : "no useful bound";
  }
}
