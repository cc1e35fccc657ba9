package rigmorrow.model.lifting;

import java.util.Objects;

/**
 * One lift or lowering by one person with two hands, without the load.
 *
 * @param origin where the lift starts
 * @param destination where it ends
 * @param controlledPlacement whether the item is set down with care, held for a moment or regripped
 *     at the destination: then both ends are assessed and the worse one counts (section 2.1.1 of
 *     the manual). Setting an item down on a plate for a picture is such a lift
 * @param liftsPerMinute F: lifts per minute, averaged over 15 minutes; 0 or more. Below 0.2 counts
 *     as 0.2
 * @param duration how long lifting goes on
 * @param coupling how well the hands hold the item
 */
public record LiftingTask(
    HandPosition origin,
    HandPosition destination,
    boolean controlledPlacement,
    double liftsPerMinute,
    LiftDuration duration,
    Coupling coupling) {

  /**
   * Checks the bounds.
   *
   * @throws IllegalArgumentException if the frequency is negative or not finite
   */
  public LiftingTask {
    Objects.requireNonNull(origin, "origin");
    Objects.requireNonNull(destination, "destination");
    Bounds.notNegative("lifts per minute", liftsPerMinute);
    Objects.requireNonNull(duration, "duration");
    Objects.requireNonNull(coupling, "coupling");
  }

  /** D: vertical travel of the hands, up or down. */
  public double travelCm() {
    return Math.abs(destination.verticalCm() - origin.verticalCm());
  }
}
