package rigmorrow.app.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Refuses numbers of the command line that are outside their bounds. */
final class Bounds {
  private final CommandSpec spec;

  Bounds(CommandSpec spec) {
    this.spec = spec;
  }

  void between(String option, long value, long least, long most) {
    if (value < least || value > most) {
      String accepted = most == Long.MAX_VALUE ? "at least " + least : least + " to " + most;
      throw new ParameterException(
          spec.commandLine(), option + " is " + value + "; accepted: " + accepted);
    }
  }
}
