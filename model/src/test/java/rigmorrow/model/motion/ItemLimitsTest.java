package rigmorrow.model.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.outside.OutsideCheck;

class ItemLimitsTest {

  @ParameterizedTest
  @MethodSource("rigmorrow.model.motion.MotionChecks#slip")
  void slipsWhereThePhysicsProblemsSay(OutsideCheck check) {
    check.verify();
  }

  @Test
  void letsATallNarrowBottleTurnSlowerThanABook() {
    ItemLimits bottle = new ItemLimits(0.5, 30, 150, 1.5);
    ItemLimits book = new ItemLimits(0.5, 90, 15, 1.5);
    assertThat(bottle.allowedMetresPerSecondSquared())
        .isCloseTo(9.80665 * 0.2 / 1.5, within(1e-12));
    assertThat(book.allowedMetresPerSecondSquared()).isCloseTo(9.80665 * 0.5 / 1.5, within(1e-12));
    assertThat(bottle.turnLimits(100).speed()).isLessThan(book.turnLimits(100).speed());
    assertThat(bottle.turnLimits(100).acceleration())
        .isLessThan(book.turnLimits(100).acceleration());
  }

  @Test
  void dividesTheAllowanceByTheSafetyFactor() {
    ItemLimits plain = new ItemLimits(0.4, 50, 100, 1);
    ItemLimits safe = new ItemLimits(0.4, 50, 100, 2);
    assertThat(safe.allowedMetresPerSecondSquared())
        .isCloseTo(plain.allowedMetresPerSecondSquared() / 2, within(1e-12));
  }

  @Test
  void leavesNoSpeedWhenTheTangentialPartTakesTheWholeAllowance() {
    ItemLimits limits = new ItemLimits(0.4, 50, 100, 1);
    double allowed = limits.allowedMetresPerSecondSquared();
    assertThat(limits.maximumSpeedRadPerSecond(100, allowed)).isZero();
  }

  @Test
  void splitsTheAllowanceByTheShareAsked() {
    ItemLimits limits = new ItemLimits(0.5, 1000, 1, 1, 10);
    MoveLimits turn = limits.turnLimits(200, 0.6);
    assertThat(turn.acceleration()).isCloseTo(3 / 0.2, within(1e-12));
    assertThat(turn.speed()).isCloseTo(Math.sqrt(4 / 0.2), within(1e-12));
    assertThat(turn.jerk()).isInfinite();
    assertThat(limits.turnLimits(200)).isEqualTo(limits.turnLimits(200, 0.5));
  }

  @Test
  void neverFeelsMoreThanItsAllowanceDuringAMove() {
    Random random = new Random(98);
    for (int draw = 0; draw < 500; draw++) {
      ItemLimits item =
          new ItemLimits(
              Move.logUniform(random, 0.05, 1),
              Move.logUniform(random, 5, 300),
              Move.logUniform(random, 5, 900),
              1 + random.nextDouble());
      double radiusMm = Move.logUniform(random, 1, 600);
      double share = 0.05 + 0.9 * random.nextDouble();
      MoveLimits machine = new MoveLimits(3, 10, Move.logUniform(random, 1, 1000));
      MoveLimits both = machine.tightestWith(item.turnLimits(radiusMm, share));
      DoubleSProfile move =
          DoubleSProfile.restToRest(Move.logUniform(random, 0.01, 2 * Math.PI), both);
      for (int sample = 0; sample <= 200; sample++) {
        double second = sample / 200.0 * move.durationSeconds();
        double felt =
            ItemLimits.resultantMetresPerSecondSquared(
                radiusMm, move.speedAt(second), move.accelerationAt(second));
        assertThat(felt)
            .as("%s at %s mm, %s s", item, radiusMm, second)
            .isLessThanOrEqualTo(item.allowedMetresPerSecondSquared() * (1 + 1e-9));
      }
    }
  }

  @Test
  void refusesATangentialAccelerationAboveTheAllowance() {
    ItemLimits limits = new ItemLimits(0.5, 1000, 1, 1, 10);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> limits.maximumSpeedRadPerSecond(100, 5.1))
        .withMessage(
            "tangential acceleration in m/s2 is 5.1; accepted: 0 to the item's allowance of 5.0");
  }

  @Test
  void refusesARadiusOfZero() {
    ItemLimits limits = new ItemLimits(0.5, 100, 100, 1);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> limits.turnLimits(0))
        .withMessageStartingWith("radius in mm is 0.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> limits.maximumSpeedRadPerSecond(0, 0))
        .withMessageStartingWith("radius in mm is 0.0");
  }

  @ParameterizedTest
  @CsvSource({"0", "1", "-0.5", "NaN"})
  void refusesATangentialShareOutsideZeroToOne(double share) {
    ItemLimits limits = new ItemLimits(0.5, 100, 100, 1);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> limits.turnLimits(100, share))
        .withMessageStartingWith("tangential share is ");
  }

  @ParameterizedTest
  @CsvSource({
    "0, 1, 1, 1, 9.8, friction coefficient",
    "1, 0, 1, 1, 9.8, half base width",
    "1, 1, 0, 1, 9.8, height of the centre of mass",
    "1, 1, 1, 0.9, 9.8, safety factor",
    "1, 1, 1, Infinity, 9.8, safety factor",
    "1, 1, 1, 1, 0, gravity"
  })
  void refusesNumbersOutsideTheirBounds(
      double friction, double halfBase, double height, double safety, double gravity, String name) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new ItemLimits(friction, halfBase, height, safety, gravity))
        .withMessageStartingWith(name);
  }
}
