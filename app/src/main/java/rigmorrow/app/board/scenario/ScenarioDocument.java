package rigmorrow.app.board.scenario;

import rigmorrow.data.json.Trees;
import rigmorrow.data.scenario.ScenarioFile;
import rigmorrow.data.scenario.ScenarioWriter;
import rigmorrow.model.scenario.Study;

/**
 * Scenarios that were read and can be made on every day.
 *
 * @param number another for every other document
 * @param name of the file they came from, to be shown only
 * @param study what the file says
 * @param interestPercent in a year, 0 to 100, for purchases that somebody adds without one
 */
public record ScenarioDocument(long number, String name, Study study, double interestPercent) {

  /** The document of a file that was read. */
  static ScenarioDocument of(long number, String name, ScenarioFile read) {
    return new ScenarioDocument(number, name, read.study(), read.interestPercent());
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
