package rigmorrow.benchmarks.cli;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rigmorrow.data.problem.InputException;

/** The command with a command for each tier. */
@Command(
    name = "benchmarks",
    description = "Compares the solver with other ways of planning; see benchmarks/PROTOCOL.md.",
    footer = {
      "",
      "Examples:",
      "  benchmarks days                                       all days, 10 s a plan",
      "  benchmarks days --folder my-days --seeds 3            a studio's own days",
      "  benchmarks literature --sets small,tardiness",
      "  benchmarks report --out out/days                      a run's report again",
      "  benchmarks micro -wi 3 -i 5                           decodes a second"
    })
public final class BenchmarksCommand implements Runnable {
  @Mixin HelpOption help;

  @Spec private CommandLine.Model.CommandSpec spec;

  private BenchmarksCommand() {}

  /**
   * Runs a command line.
   *
   * @param out for the report
   * @param err for progress and errors
   * @return the exit code
   */
  public static int run(List<String> arguments, PrintStream out, PrintStream err) {
    return commandLine(out, err).execute(arguments.toArray(String[]::new));
  }

  /** Everything the program understands. */
  static CommandLine commandLine(PrintStream out, PrintStream err) {
    CommandLine line =
        new CommandLine(new BenchmarksCommand())
            .addSubcommand(new DaysCommand(out, err))
            .addSubcommand(new LiteratureCommand(out, err))
            .addSubcommand(new ReportCommand(out))
            .addSubcommand(
                new CommandLine(new MicroCommand()).setUnmatchedOptionsArePositionalParams(true));
    line.setOut(writer(out)).setErr(writer(err));
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setExecutionExceptionHandler((failure, command, result) -> told(failure, err));
    return line;
  }

  private static int told(Exception failure, PrintStream err) throws Exception {
    if (failure instanceof InputException input) {
      err.println(input.getMessage());
      return ExitCodes.BAD_INPUT;
    }
    if (failure instanceof IOException io) {
      err.println(io.getClass().getSimpleName() + ": " + io.getMessage());
      return ExitCodes.BAD_INPUT;
    }
    failure.printStackTrace(err);
    return ExitCodes.FAULT;
  }

  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
  }

  /** Without a command there is nothing to do but say what there is. */
  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(), "Which tier? accepted: days, literature, micro");
  }
}
