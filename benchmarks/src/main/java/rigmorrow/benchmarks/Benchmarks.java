package rigmorrow.benchmarks;

import java.io.PrintStream;
import java.util.List;
import rigmorrow.benchmarks.cli.BenchmarksCommand;

/** The program that compares the solver with others. */
public final class Benchmarks {
  private Benchmarks() {}

  /** Runs the command line and leaves the JVM with its exit code. */
  public static void main(String[] args) {
    System.exit(run(args, System.out, System.err));
  }

  /**
   * Runs the command line in this JVM.
   *
   * @param args as for the program
   * @param out for the report
   * @param err for progress and errors
   * @return the exit code: 0 done, 1 a fault of the program, 2 bad input or usage, 3 a plan that
   *     breaks rules
   */
  public static int run(String[] args, PrintStream out, PrintStream err) {
    return BenchmarksCommand.run(List.of(args), out, err);
  }
}
