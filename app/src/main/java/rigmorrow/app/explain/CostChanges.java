package rigmorrow.app.explain;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.app.report.Counted;
import rigmorrow.app.report.Times;
import rigmorrow.model.explain.Cost;

/** Says what becomes better or worse from one plan to another, figure by figure. */
public final class CostChanges {
  private CostChanges() {}

  /**
   * Sentences with figures; the first says how the two stand, and the others what moves.
   *
   * @param times of the batch
   */
  public static List<String> of(Cost now, Cost then, Times times) {
    List<String> changes = new ArrayList<>();
    changes.add(CostSentences.standing(now, then));
    if (then.hard() != now.hard()) {
      changes.add(
          "rules that must hold are broken by "
              + then.hard()
              + " (mostly seconds) instead of "
              + now.hard());
    }
    if (then.leftOutJobs() != now.leftOutJobs()) {
      changes.add(
          Counted.of(then.leftOutJobs(), "job") + " left out instead of " + now.leftOutJobs());
    }
    changes.addAll(CostSentences.moved(now, then, 0, times));
    return changes.stream().map(CostChanges::sentence).toList();
  }

  private static String sentence(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
  }
}
