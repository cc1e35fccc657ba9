package rigmorrow.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import rigmorrow.app.files.FileFailures;
import rigmorrow.app.files.RefusedException;
import rigmorrow.app.report.Json;
import rigmorrow.app.terminal.Console;
import rigmorrow.app.terminal.ExitCodes;
import rigmorrow.app.terminal.Text;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;

/** Says what went wrong, on standard error, and with {@code --json} as a document besides. */
final class FailureTeller implements IExecutionExceptionHandler, IParameterExceptionHandler {
  private final Console console;
  private final boolean json;
  private final boolean debug;

  /**
   * @param console where to write
   * @param arguments of the program: they may not have been parsed when something goes wrong
   */
  FailureTeller(Console console, List<String> arguments) {
    this.console = console;
    this.json = arguments.contains("--json");
    this.debug = arguments.contains("--debug");
  }

  @Override
  public int handleParseException(ParameterException failure, String[] arguments) {
    UsageFault fault = UsageFault.of(failure, List.of(arguments));
    fault.lines().forEach(this::tell);
    String value = String.join(" ", arguments);
    InputProblem problem = new InputProblem("", "command line", "", value, fault.accepted());
    return document(ExitCodes.BAD_INPUT, "" + failure.getMessage(), List.of(problem));
  }

  @Override
  public int handleExecutionException(
      Exception failure, CommandLine commandLine, ParseResult result) {
    if (failure instanceof InputException input) {
      tell("" + input.getMessage());
      return document(ExitCodes.BAD_INPUT, firstLine(input), input.problems());
    }
    if (failure instanceof RefusedException refused) {
      tell("" + refused.getMessage());
      return document(ExitCodes.BAD_INPUT, firstLine(refused), refused.problems());
    }
    if (failure instanceof UncheckedIOException unchecked) {
      IOException cause = unchecked.getCause();
      return cause == null ? fault(failure) : cannotUse(cause);
    }
    if (failure instanceof IOException io) {
      return cannotUse(io);
    }
    return fault(failure);
  }

  private int cannotUse(IOException failure) {
    String why = FileFailures.reason(failure);
    String place = FileFailures.file(failure);
    tell((place.isEmpty() ? "" : place + ": ") + why);
    InputProblem problem = new InputProblem(place, "file", "", "", "one that can be used: " + why);
    return document(ExitCodes.BAD_INPUT, why, List.of(problem));
  }

  /**
   * A stream keeps quiet about what it could not write; nobody must take the half for the whole.
   */
  int unwritten() {
    console.err().println("Standard output could not be written; what it has is not complete.");
    return ExitCodes.FAULT;
  }

  /** Whatever else is thrown is a fault of ours, errors of the JVM included. */
  int fault(Throwable failure) {
    String what = failure.getClass().getSimpleName() + ": " + failure.getMessage();
    console
        .err()
        .println(
            "A fault of the program ("
                + what.lines().findFirst().orElse("")
                + "); run it again"
                + " with --debug and report what it says.");
    if (debug) {
      StringWriter trace = new StringWriter();
      PrintWriter writer = new PrintWriter(trace);
      failure.printStackTrace(writer);
      writer.flush();
      console.err().print(trace);
    }
    return document(ExitCodes.FAULT, what, List.of());
  }

  /** A terminal gets its lines wrapped; in a file or pipe a problem stays one line to search. */
  private void tell(String text) {
    for (String line : text.lines().toList()) {
      if (console.redraws()) {
        String indent = " ".repeat(line.length() - line.stripLeading().length());
        Text.wrap(indent, indent + "    ", line, console.columns()).forEach(console.err()::println);
      } else {
        console.err().println(line);
      }
    }
  }

  private static String firstLine(Exception failure) {
    String message = failure.getMessage();
    return message == null ? "" : message.lines().findFirst().orElse("");
  }

  private int document(int exitCode, String message, List<InputProblem> problems) {
    if (json) {
      console.out().println(Json.text(Json.error(exitCode, message, problems)));
    }
    return exitCode;
  }
}
