package rigmorrow.app.cli.options;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Refuses numbers of the command line that are outside their bounds. */
public final class Bounds {
  private final CommandSpec spec;

  /**
   * @param spec of the command
   */
  public Bounds(CommandSpec spec) {
    this.spec = spec;
  }

  /**
   * Looks at a number.
   *
   * @param most Long.MAX_VALUE for no upper bound
   * @throws ParameterException when it is outside its bounds
   */
  public void between(String option, long value, long least, long most) {
    if (value < least || value > most) {
      String accepted = most == Long.MAX_VALUE ? "at least " + least : least + " to " + most;
      throw new ParameterException(
          spec.commandLine(), option + " is " + value + "; accepted: " + accepted);
    }
  }
}
