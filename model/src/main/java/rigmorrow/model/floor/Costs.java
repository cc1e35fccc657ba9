package rigmorrow.model.floor;

import rigmorrow.model.check.Require;

/**
 * Money, for comparing floors.
 *
 * @param currency ISO 4217 code
 * @param operatorPerHour cost of an operator hour, 0 or more
 * @param overtimeFactor on an operator hour outside the shift, at least 1
 * @param rigPerHour cost of an hour in which a rig runs, waiting left out, 0 or more
 * @param latePerHour cost of an hour after a promise for a job of weight 1, 0 or more
 * @param leftOutPerJob cost of a job of weight 1 that is left out, 0 or more
 */
public record Costs(
    String currency,
    double operatorPerHour,
    double overtimeFactor,
    double rigPerHour,
    double latePerHour,
    double leftOutPerJob) {
  public Costs {
    Require.that(
        currency.matches("[A-Z]{3}"),
        "costs.currency",
        currency,
        "three capital letters such as EUR");
    Require.atLeast("costs.operatorPerHour", operatorPerHour, 0);
    Require.atLeast("costs.overtimeFactor", overtimeFactor, 1.0);
    Require.atLeast("costs.rigPerHour", rigPerHour, 0);
    Require.atLeast("costs.latePerHour", latePerHour, 0);
    Require.atLeast("costs.leftOutPerJob", leftOutPerJob, 0);
  }
}
