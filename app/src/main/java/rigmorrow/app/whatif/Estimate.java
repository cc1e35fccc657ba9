package rigmorrow.app.whatif;

import java.util.List;
import java.util.OptionalLong;
import rigmorrow.app.report.Counted;
import rigmorrow.app.report.Durations;
import rigmorrow.model.outcome.Cell;

/**
 * What a comparison would take.
 *
 * @param plans how many
 * @param known plans that are there already
 * @param seconds that the others take; empty where nobody knows yet
 * @param note what there is to say of the file of plans, in sentences; mostly empty
 * @param sentence all of it in words, the note too
 */
public record Estimate(int plans, int known, OptionalLong seconds, String note, String sentence) {

  /**
   * The estimate.
   *
   * @param known plans that are there already
   * @param note what there is to say of their file, in sentences; mostly empty
   */
  public static Estimate of(Comparison comparison, List<Cell> known, String note) {
    int left = comparison.plans() - known.size();
    OptionalLong seconds = comparison.secondsLeft(known);
    StringBuilder sentence = new StringBuilder(comparison.inWords()).append(". ");
    if (!note.isEmpty()) {
      sentence.append(note).append(' ');
    }
    if (left == 0) {
      sentence.append("All of them are there already, so nothing is left to plan.");
    } else if (known.isEmpty()) {
      sentence.append(
          seconds.isPresent()
              ? "That takes about " + Durations.left(seconds.getAsLong()) + "."
              : "How long a plan of so many steps takes is known after the first.");
    } else {
      sentence.append(
          "Of %d plans %s there already; to make the other %d takes about %s."
              .formatted(
                  comparison.plans(),
                  Counted.of(known.size(), "is", "are"),
                  left,
                  Durations.left(seconds.orElse(0))));
      if (comparison.timed()) {
        sentence.append(
            " Plans that time stops had the machine as it was when they were made; steps make them"
                + " the same at any time.");
      }
    }
    return new Estimate(comparison.plans(), known.size(), seconds, note, sentence.toString());
  }
}
