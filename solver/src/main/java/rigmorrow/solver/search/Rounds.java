package rigmorrow.solver.search;

/**
 * How often the annealing starts anew. Where there is more effort than one slow cooling can use,
 * several coolings from plans torn apart find what one cannot.
 */
final class Rounds {
  private static final double DECODES_A_FIFTH_POWER = 0.03;
  private static final int MOST = 200;

  private Rounds() {}

  /**
   * One cooling for 3,000 decodes at 10 jobs, growing with the fifth power of the number of jobs:
   * measured on days of 8 to 150 jobs and on textbook problems of 33 to 60.
   *
   * @param decodes that the search can do, about
   * @param jobs of the batch
   */
  static int count(double decodes, int jobs) {
    double one = DECODES_A_FIFTH_POWER * jobs * jobs * jobs * jobs * jobs;
    return (int) Math.max(1, Math.min(MOST, decodes / one));
  }

  /** Number of the round that a part of the effort belongs to. */
  static int number(double spent, int rounds) {
    return (int) (spent * rounds);
  }

  /** The part of its round that is spent. */
  static double spentOfRound(double spent, int rounds) {
    return spent * rounds - number(spent, rounds);
  }
}
