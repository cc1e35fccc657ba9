package rigmorrow.model.floor;

import rigmorrow.model.check.Require;

/**
 * What a driven axis can do: the plate or the camera arm.
 *
 * @param speedDegPerS highest speed in degrees per second, above 0
 * @param accelerationDegPerS2 highest acceleration in degrees per second squared, above 0
 * @param jerkDegPerS3 highest jerk in degrees per second cubed, above 0
 * @param settleSeconds rest after a stop before a picture can be taken, 0 or more
 */
public record AxisLimits(
    double speedDegPerS, double accelerationDegPerS2, double jerkDegPerS3, double settleSeconds) {
  public AxisLimits {
    Require.positive("speedDegPerS", speedDegPerS);
    Require.positive("accelerationDegPerS2", accelerationDegPerS2);
    Require.positive("jerkDegPerS3", jerkDegPerS3);
    Require.atLeast("settleSeconds", settleSeconds, 0);
  }
}
