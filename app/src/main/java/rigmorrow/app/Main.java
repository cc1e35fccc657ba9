package rigmorrow.app;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The {@code rigmorrow} command. */
@Command(
    name = "rigmorrow",
    description = "Plans the day of a floor of automated photo rigs.",
    mixinStandardHelpOptions = true,
    versionProvider = VersionFromBuild.class)
public final class Main implements Runnable {

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  /** Runs the command and leaves the JVM with its exit code. */
  public static void main(String[] args) {
    System.exit(new CommandLine(new Main()).execute(args));
  }

  /** Without a subcommand there is nothing to do but say what there is. */
  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }
}
