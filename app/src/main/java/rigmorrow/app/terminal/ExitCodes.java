package rigmorrow.app.terminal;

/** What the program's exit code says; part of what scripts rely on. */
public final class ExitCodes {
  /** Done. */
  public static final int DONE = 0;

  /** A fault of the program. */
  public static final int FAULT = 1;

  /** Something is wrong with the input or the command line. */
  public static final int BAD_INPUT = 2;

  /** There is no workable plan, a plan breaks rules, or it leaves out what must be done. */
  public static final int NO_PLAN = 3;

  /** Stopped before there was anything to print; also what the JVM leaves with after Ctrl-C. */
  public static final int STOPPED = 130;

  private ExitCodes() {}
}
