package rigmorrow.data.scenario;

import rigmorrow.model.check.Require;
import rigmorrow.model.scenario.Study;

/**
 * What a scenario file says.
 *
 * @param interestPercent in a year, 0 to 100, for purchases that do not say it themselves
 */
public record ScenarioFile(Study study, double interestPercent) {
  private static final double MOST_PERCENT = 100;

  public ScenarioFile {
    Require.between("money.interestPercent", interestPercent, 0, MOST_PERCENT);
  }
}
