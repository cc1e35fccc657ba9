package rigmorrow.model.lifting;

/** Who or what it takes to get an item onto a rig. */
public enum LiftCrew {
  /** One person lifts it. */
  ONE_PERSON(1),
  /** Two people lift it together. */
  TWO_PEOPLE(2),
  /**
   * Two people bring it in with a lifting aid (hoist, trolley with a lift table, vacuum lifter).
   */
  LIFTING_AID(2);

  private final int people;

  LiftCrew(int people) {
    this.people = people;
  }

  /** How many operators are busy with it. */
  public int people() {
    return people;
  }
}
