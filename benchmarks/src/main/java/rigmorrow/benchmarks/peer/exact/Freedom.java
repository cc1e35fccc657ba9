package rigmorrow.benchmarks.peer.exact;

/** Which part of a plan a model may change. */
interface Freedom {
  /** Everything: the full model. */
  Freedom FULL =
      new Freedom() {
        @Override
        public boolean on(int job, int rig) {
          return true;
        }

        @Override
        public boolean out(int job) {
          return true;
        }

        @Override
        public boolean after(int rig, int from, int to) {
          return true;
        }

        @Override
        public boolean settled(int job) {
          return false;
        }
      };

  /** True when a job may be on a rig that it fits. */
  boolean on(int job, int rig);

  /** True when a job may be left out. */
  boolean out(int job);

  /**
   * True when a job may follow another on a rig.
   *
   * @param from job before, or {@link SetupCosts#INITIAL}
   * @param to job after, or {@link KnownPlan#NONE} for nothing more
   */
  boolean after(int rig, int from, int to);

  /** True when a job keeps its times and its people too. */
  boolean settled(int job);
}
