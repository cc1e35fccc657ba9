package rigmorrow.solver.timeline;

/** Chooses the next job of a rig while the decode runs, for building a plan from nothing. */
public interface NextJob {
  /** Answer for "nothing more on this rig". */
  int NONE = -1;

  /**
   * @param rig that has become free
   * @param time second at which it is free
   * @param timeline for asking what a changeover would take now
   * @return the job to do next, or {@link #NONE}
   */
  int choose(int rig, int time, Timeline timeline);
}
