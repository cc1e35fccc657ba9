package rigmorrow.benchmarks.cli;

/** What the exit code says; the same as those of the planner's own command line. */
final class ExitCodes {
  static final int DONE = 0;
  static final int FAULT = 1;
  static final int BAD_INPUT = 2;
  static final int UNWORKABLE = 3;

  private ExitCodes() {}
}
