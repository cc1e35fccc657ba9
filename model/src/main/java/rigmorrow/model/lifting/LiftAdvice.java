package rigmorrow.model.lifting;

import java.util.Objects;

/**
 * Who should lift an item, with the figures that say so.
 *
 * <p>One person where the lifting index is at most 1, the design goal of NIOSH 94-110 (section
 * 1.4.3). Beyond that the publication offers no rule: its equation is not meant for team lifts. Our
 * planning rule, not published: two people where half the mass is at most the recommended weight
 * limit of one person divided by a team factor, since two people never share a load evenly nor move
 * quite together. Otherwise two people and a lifting aid.
 *
 * <p>This is advice for planning time and people. It assumes healthy, trained adults, knows nothing
 * of the person or the place, and gives way to local rules and to the judgement of people qualified
 * for it.
 *
 * @param onePerson what the equation says about one person with the whole load
 * @param teamFactor what the limit of one person is divided by when two lift together; 1 or more
 */
public record LiftAdvice(LiftingResult onePerson, double teamFactor) {

  /** The team factor unless the caller chooses another: a planning rule, not published. */
  public static final double DEFAULT_TEAM_FACTOR = 1.5;

  private static final double HIGHEST_GOOD_INDEX = 1;

  /**
   * Checks the team factor.
   *
   * @throws IllegalArgumentException if the team factor is outside its bounds
   */
  public LiftAdvice {
    Objects.requireNonNull(onePerson, "onePerson");
    Bounds.atLeast1("team factor", teamFactor);
  }

  /**
   * Returns advice with {@link #DEFAULT_TEAM_FACTOR}.
   *
   * @param task the lift
   * @param itemMassKg mass of the item with all that is lifted with it; above 0
   * @throws IllegalArgumentException if the mass is outside its bounds
   */
  public static LiftAdvice of(LiftingTask task, double itemMassKg) {
    return of(task, itemMassKg, DEFAULT_TEAM_FACTOR);
  }

  /**
   * Returns advice with a team factor of the caller's.
   *
   * @param task the lift
   * @param itemMassKg mass of the item with all that is lifted with it; above 0
   * @param teamFactor what the limit of one person is divided by when two lift together; 1 or more.
   *     From 2 on two people are never allowed more than one
   * @throws IllegalArgumentException if a number is outside its bounds
   */
  public static LiftAdvice of(LiftingTask task, double itemMassKg, double teamFactor) {
    return new LiftAdvice(LiftingEquation.assess(task, itemMassKg), teamFactor);
  }

  /** Who should lift. */
  public LiftCrew crew() {
    if (onePerson.liftingIndex() <= HIGHEST_GOOD_INDEX) {
      return LiftCrew.ONE_PERSON;
    }
    return teamIndex() <= HIGHEST_GOOD_INDEX ? LiftCrew.TWO_PEOPLE : LiftCrew.LIFTING_AID;
  }

  /** Mass that each of two people would lift. */
  public double shareOfTwoKg() {
    return onePerson.loadKg() / 2;
  }

  /** Most that each of two people should lift under our planning rule. */
  public double limitPerPersonOfTwoKg() {
    return onePerson.recommendedWeightLimitKg() / teamFactor;
  }

  /**
   * Index of each of two people under our planning rule: share divided by limit; infinite where the
   * limit is 0.
   */
  public double teamIndex() {
    return shareOfTwoKg() / limitPerPersonOfTwoKg();
  }
}
