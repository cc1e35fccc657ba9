package rigmorrow.model.lifting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LiftAdviceTest {

  /** Every multiplier is 1: one person may lift 23 kg. */
  private static final LiftingTask EASIEST = task(25);

  /** The hands are at half the reach: one person may lift 11.5 kg. */
  private static final LiftingTask AT_ARMS_LENGTH = task(50);

  private static LiftingTask task(double horizontalCm) {
    HandPosition hands = new HandPosition(horizontalCm, 75, 0);
    return new LiftingTask(hands, hands, true, 0.1, LiftDuration.UP_TO_1_HOUR, Coupling.GOOD);
  }

  /** The bounds follow from the rule: 23 kg for one, 2 * 23 / 1.5 = 30.7 kg for two. */
  @ParameterizedTest
  @CsvSource({
    "0.1, ONE_PERSON, 1",
    "22.9, ONE_PERSON, 1",
    "23.1, TWO_PEOPLE, 2",
    "30.6, TWO_PEOPLE, 2",
    "30.7, LIFTING_AID, 2",
    "80, LIFTING_AID, 2"
  })
  void namesWhoShouldLift(double massKg, LiftCrew crew, int people) {
    LiftAdvice advice = LiftAdvice.of(EASIEST, massKg);
    assertThat(advice.crew()).isEqualTo(crew);
    assertThat(advice.crew().people()).isEqualTo(people);
  }

  @Test
  void stillCallsForOnePersonAtExactlyTheLimit() {
    double limitKg = LiftingEquation.assess(AT_ARMS_LENGTH, 1).recommendedWeightLimitKg();
    assertThat(limitKg).isCloseTo(11.5, within(1e-9));
    assertThat(LiftAdvice.of(AT_ARMS_LENGTH, limitKg).crew()).isEqualTo(LiftCrew.ONE_PERSON);
  }

  @Test
  void givesTheFiguresBehindIt() {
    LiftAdvice advice = LiftAdvice.of(AT_ARMS_LENGTH, 15);
    assertThat(advice.crew()).isEqualTo(LiftCrew.TWO_PEOPLE);
    assertThat(advice.onePerson().recommendedWeightLimitKg()).isCloseTo(11.5, within(1e-9));
    assertThat(advice.onePerson().liftingIndex()).isCloseTo(15 / 11.5, within(1e-9));
    assertThat(advice.teamFactor()).isEqualTo(1.5);
    assertThat(advice.shareOfTwoKg()).isEqualTo(7.5);
    assertThat(advice.limitPerPersonOfTwoKg()).isCloseTo(11.5 / 1.5, within(1e-9));
    assertThat(advice.teamIndex()).isCloseTo(7.5 / (11.5 / 1.5), within(1e-9));
  }

  @Test
  void asksForAnAidSoonerWithAHigherTeamFactor() {
    assertThat(LiftAdvice.of(AT_ARMS_LENGTH, 20, 1).crew()).isEqualTo(LiftCrew.TWO_PEOPLE);
    assertThat(LiftAdvice.of(AT_ARMS_LENGTH, 20, 1.5).crew()).isEqualTo(LiftCrew.LIFTING_AID);
    assertThat(LiftAdvice.of(AT_ARMS_LENGTH, 12, 2).crew()).isEqualTo(LiftCrew.LIFTING_AID);
  }

  @Test
  void asksForAnAidWhereTheEquationAllowsNoLifting() {
    LiftAdvice advice = LiftAdvice.of(task(64), 0.5);
    assertThat(advice.crew()).isEqualTo(LiftCrew.LIFTING_AID);
    assertThat(advice.teamIndex()).isInfinite();
  }

  @Test
  void refusesNumbersOutsideTheirBounds() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LiftAdvice.of(EASIEST, -1))
        .withMessageStartingWith("load in kg is -1.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LiftAdvice.of(EASIEST, 1, 0.9))
        .withMessageStartingWith("team factor is 0.9");
  }
}
