package rigmorrow.app.board.scenario;

import rigmorrow.data.json.Trees;
import rigmorrow.data.scenario.ScenarioWriter;
import rigmorrow.model.money.Investment;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.scenario.Study;

/**
 * Scenarios that were read and can be made on every day.
 *
 * @param number another for every other document
 * @param name of the file they came from, to be shown only
 * @param study what the file says
 * @param interestPercent for purchases that somebody adds without one
 */
public record ScenarioDocument(long number, String name, Study study, double interestPercent) {

  /** A document whose interest is that of its first purchase, or 0: the study does not say it. */
  public static ScenarioDocument of(long number, String name, Study study) {
    double interest =
        study.scenarios().stream()
            .map(Scenario::purchase)
            .filter(purchase -> purchase != null)
            .mapToDouble(Investment::interestPercent)
            .findFirst()
            .orElse(0);
    return new ScenarioDocument(number, name, study, interest);
  }

  /** The scenario file. */
  public String text() {
    return text(study, interestPercent);
  }

  /** The file of a study. */
  static String text(Study study, double interestPercent) {
    return ScenarioWriter.write(study, interestPercent, Trees.Notation.YAML);
  }
}
