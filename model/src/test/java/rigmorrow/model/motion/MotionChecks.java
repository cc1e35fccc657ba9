package rigmorrow.model.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import rigmorrow.model.outside.Figure;
import rigmorrow.model.outside.OutsideCheck;

/** What the literature says about moves, swings and plates. */
public final class MotionChecks {
  private static final String BOOK =
      "Biagiotti, Melchiorri: Trajectory Planning for Automatic Machines and Robots (2008), 3.4";
  private static final String RUCKIG = "Ruckig library (MIT licence), test/test_target.cpp";
  private static final String PHYSICS = "university physics problem";
  private static final double RAD_PER_SECOND_PER_RPM = 2 * Math.PI / 60;

  /** The gravity that the problems calculate with. */
  private static final double PROBLEM_GRAVITY = 9.8;

  private MotionChecks() {}

  /** Every list below. */
  public static List<OutsideCheck> all() {
    List<OutsideCheck> all = new ArrayList<>(doubleS());
    all.addAll(slip());
    all.addAll(pendulum());
    all.addAll(decrement());
    all.addAll(plate());
    return all;
  }

  /** Double-S moves. */
  static List<OutsideCheck> doubleS() {
    return List.of(
        book("3.9, the speed limit is reached", MotionChecks::example39),
        book("3.10, the speed limit is not reached", MotionChecks::example310),
        book("3.11, under the acceleration limit the book arrives at", MotionChecks::example311),
        book("3.12, under the acceleration limit the book arrives at", MotionChecks::example312),
        // The printed peak speed of 3.13 is that of 3.11 and contradicts the printed Tj: not used.
        book("3.13, from rest to rest", MotionChecks::example313),
        ruckig("1", () -> ruckig(1, "3.1748021039", 1e-10)),
        ruckig("2", MotionChecks::ruckigOverTwo));
  }

  private static OutsideCheck book(String example, Supplier<List<Figure>> figures) {
    return OutsideCheck.of(
        "Double-S move, example " + example, BOOK, DoubleSPublishedExamplesTest.class, figures);
  }

  private static OutsideCheck ruckig(String distance, Supplier<List<Figure>> figures) {
    return OutsideCheck.of(
        "Double-S move from rest to rest over " + distance + ", all limits 1",
        RUCKIG,
        DoubleSPublishedExamplesTest.class,
        figures);
  }

  private static List<Figure> example39() {
    DoubleSProfile move = DoubleSProfile.between(10, 1, 0, new MoveLimits(5, 10, 30));
    return printed(move, "0.7333", "1.1433", "0.8333", "0.3333", "5");
  }

  private static List<Figure> example310() {
    DoubleSProfile move = DoubleSProfile.between(10, 1, 0, new MoveLimits(10, 10, 30));
    return printed(move, "1.0747", "0", "1.1747", "0.3333", "8.4136");
  }

  private static List<Figure> example311() {
    return printed(example311UnderTheLoweredLimit(), "0.4666", "0", "1.4718", "0.2321", "8.6329");
  }

  /**
   * The book lowers the acceleration limit by 1 % at a time; its example is the quickest move under
   * that lower limit.
   */
  static DoubleSProfile example311UnderTheLoweredLimit() {
    double lowered = accelerationLoweredAsInTheBook(10, 7, 0, 10, 30);
    return DoubleSProfile.between(10, 7, 0, new MoveLimits(10, lowered, 30));
  }

  private static List<Figure> example312() {
    DoubleSProfile move = example312UnderTheLoweredLimit();
    return List.of(
        Figure.rounded("Ta", "0", move.accelerationSeconds()),
        Figure.rounded("Tv", "0", move.cruiseSeconds()),
        Figure.rounded("Td", "2.6667", move.decelerationSeconds()),
        Figure.rounded("Tj of Ta", "0", move.accelerationJerkSeconds()),
        Figure.rounded("Tj of Td", "0.0973", move.decelerationJerkSeconds()),
        Figure.near("peak speed", "7.5", 0, move.peakSpeed()));
  }

  /**
   * The book ends up with a single, gentle deceleration; 3.28 gives its stretch of jerk and so its
   * acceleration.
   */
  static DoubleSProfile example312UnderTheLoweredLimit() {
    double speeds = 7.5;
    double jerkSeconds =
        (30 * 10 - Math.sqrt(30 * (30 * 10 * 10 - speeds * speeds * 7.5))) / (30 * speeds);
    return DoubleSProfile.between(10, 7.5, 0, new MoveLimits(10, 30 * jerkSeconds, 30));
  }

  private static List<Figure> example313() {
    DoubleSProfile move = DoubleSProfile.restToRest(10, 10, 20, 30);
    return List.of(
        Figure.rounded("Ta", "1.1006", move.accelerationSeconds()),
        Figure.rounded("Tv", "0", move.cruiseSeconds()),
        Figure.rounded("Td", "1.1006", move.decelerationSeconds()),
        Figure.rounded("Tj", "0.5503", move.accelerationJerkSeconds()),
        Figure.near("peak speed by jerk * Tj^2", "9.085", 2e-3, move.peakSpeed()));
  }

  private static List<Figure> printed(
      DoubleSProfile move, String up, String cruise, String down, String jerk, String peak) {
    return List.of(
        Figure.rounded("Ta", up, move.accelerationSeconds()),
        Figure.rounded("Tv", cruise, move.cruiseSeconds()),
        Figure.rounded("Td", down, move.decelerationSeconds()),
        Figure.rounded("Tj of Ta", jerk, move.accelerationJerkSeconds()),
        Figure.rounded("Tj of Td", jerk, move.decelerationJerkSeconds()),
        Figure.rounded("peak speed", peak, move.peakSpeed()));
  }

  private static List<Figure> ruckig(double distance, String seconds, double tolerance) {
    DoubleSProfile move = DoubleSProfile.restToRest(distance, 1, 1, 1);
    return List.of(Figure.near("seconds", seconds, tolerance, move.durationSeconds()));
  }

  private static List<Figure> ruckigOverTwo() {
    DoubleSProfile move = DoubleSProfile.restToRest(2, 1, 1, 1);
    return List.of(
        Figure.near("seconds", "4.0", 1e-12, move.durationSeconds()),
        Figure.near("place after 2 s", "1.0", 1e-12, move.positionAt(2)),
        Figure.near("place after 0.6694329501 s", "0.05", 1e-10, move.positionAt(0.6694329501)));
  }

  /**
   * Equations 3.26 under a shrinking acceleration limit, as section 3.4 of the book describes it.
   */
  private static double accelerationLoweredAsInTheBook(
      double distance, double startSpeed, double endSpeed, double acceleration, double jerk) {
    double lowered = acceleration;
    while (true) {
      double jerkSeconds = lowered / jerk;
      double discriminant =
          Math.pow(lowered, 4) / (jerk * jerk)
              + 2 * (startSpeed * startSpeed + endSpeed * endSpeed)
              + lowered * (4 * distance - 2 * jerkSeconds * (startSpeed + endSpeed));
      double root = Math.sqrt(discriminant);
      double up = (lowered * jerkSeconds - 2 * startSpeed + root) / (2 * lowered);
      double down = (lowered * jerkSeconds - 2 * endSpeed + root) / (2 * lowered);
      if (up > 2 * jerkSeconds && down > 2 * jerkSeconds) {
        return lowered;
      }
      lowered *= 0.99;
    }
  }

  /** When an item slips on a turntable. */
  static List<OutsideCheck> slip() {
    return List.of(
        slip(
            "Friction that holds an item 0.05 m from the axis at 90 rpm",
            PHYSICS + ", computed",
            () ->
                List.of(
                    Figure.rounded("", "0.4532", friction(50, 90 * RAD_PER_SECOND_PER_RPM, 0)))),
        slip(
            "Speed at which an item with friction 0.8 slips 0.22 m from the axis, rpm",
            PHYSICS + ", computed",
            () ->
                List.of(
                    Figure.rounded(
                        "",
                        "57.0",
                        slidingAt(0.8).maximumSpeedRadPerSecond(220, 0) / RAD_PER_SECOND_PER_RPM))),
        slip(
            "Item 0.15 m from the axis that slips after 7 s at 0.8 rad/s2",
            PHYSICS,
            MotionChecks::slipsWhileSpeedingUp));
  }

  private static OutsideCheck slip(String what, String source, Supplier<List<Figure>> figures) {
    return OutsideCheck.of(what, source, ItemLimitsTest.class, figures);
  }

  private static List<Figure> slipsWhileSpeedingUp() {
    double friction = friction(150, 0.8 * 7, 0.8);
    double speed = slidingAt(friction).maximumSpeedRadPerSecond(150, 0.8 * 0.150);
    return List.of(
        Figure.near("friction", "0.48", 0.005, friction), Figure.near("rad/s", "5.6", 1e-9, speed));
  }

  private static double friction(double radiusMm, double radPerSecond, double radPerSecond2) {
    return ItemLimits.resultantMetresPerSecondSquared(radiusMm, radPerSecond, radPerSecond2)
        / PROBLEM_GRAVITY;
  }

  /** An item too broad to tip. */
  private static ItemLimits slidingAt(double frictionCoefficient) {
    return new ItemLimits(frictionCoefficient, 1000, 1, 1, PROBLEM_GRAVITY);
  }

  /** How a swing goes. */
  static List<OutsideCheck> pendulum() {
    return List.of(
        OutsideCheck.of(
            "Period of a pendulum of 994 mm (the seconds pendulum), s",
            "textbook figure, from memory",
            PendulumTest.class,
            () -> List.of(Figure.near("", "2.0", 0.001, new Pendulum(994, 0.01).periodSeconds()))));
  }

  /** How a swing dies. */
  static List<OutsideCheck> decrement() {
    return List.of(
        OutsideCheck.of(
            "Log decrement where 13 % of a swing is left after 100 cycles",
            "textbook problem, computed",
            LogDecrementTest.class,
            () ->
                List.of(Figure.rounded("", "0.0204", LogDecrement.fromAmplitudes(1, 0.13, 100)))));
  }

  /** What a glass plate weighs. */
  static List<OutsideCheck> plate() {
    return List.of(
        OutsideCheck.of(
            "Glass plate of 850 mm and 8 mm at 2,500 kg/m3, kg",
            "computed; common practice says about 11.5",
            DiscTest.class,
            () -> {
              double massKg = new Disc(850, 8, 2500).massKg();
              return List.of(
                  Figure.rounded("computed", "11.35", massKg),
                  Figure.near("common practice", "11.5", 0.2, massKg));
            }));
  }
}
