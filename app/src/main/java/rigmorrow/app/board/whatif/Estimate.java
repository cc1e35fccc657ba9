package rigmorrow.app.board.whatif;

import java.util.List;
import java.util.OptionalLong;
import rigmorrow.app.report.Durations;
import rigmorrow.app.whatif.Comparison;
import rigmorrow.model.outcome.Cell;

/**
 * What a comparison would take.
 *
 * @param plans how many
 * @param known plans that are there already
 * @param seconds that the others take; empty where nobody knows yet
 * @param sentence all of it in words
 */
public record Estimate(int plans, int known, OptionalLong seconds, String sentence) {

  static Estimate of(Comparison comparison, Kept kept) {
    List<Cell> known = kept.cells();
    int left = comparison.plans() - known.size();
    OptionalLong seconds = comparison.secondsLeft(known);
    StringBuilder sentence = new StringBuilder(comparison.inWords()).append(". ");
    if (!known.isEmpty()) {
      sentence.append(
          left == 0 ? "All of them are there already. " : known.size() + " are there already. ");
    }
    if (!kept.fault().isEmpty()) {
      sentence.append(kept.note()).append(' ');
    }
    if (left > 0) {
      sentence.append(
          seconds.isPresent()
              ? "That takes about " + Durations.left(seconds.getAsLong()) + "."
              : "How long a plan of so many steps takes is known after the first.");
    }
    return new Estimate(comparison.plans(), known.size(), seconds, sentence.toString().strip());
  }
}
