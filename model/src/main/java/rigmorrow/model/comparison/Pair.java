package rigmorrow.model.comparison;

/**
 * A figure of one batch, with the floor as it is and with a scenario, each a mean over the seeds
 * that both have.
 *
 * @param batch name
 */
public record Pair(String batch, double base, double scenario) {
  /** How much more the scenario has. */
  public double difference() {
    return scenario - base;
  }
}
