package rigmorrow.app;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import rigmorrow.app.cli.RigmorrowCommand;
import rigmorrow.app.terminal.Console;
import rigmorrow.app.terminal.EarlyStop;
import rigmorrow.app.terminal.Session;

/** The program. */
public final class Main {
  private Main() {}

  /** Runs the command line and leaves the JVM with its exit code. */
  public static void main(String[] args) {
    List<String> arguments = List.of(args);
    EarlyStop stop = new EarlyStop();
    stop.listen();
    Console console = Console.ofProcess(System.getenv(), arguments.contains("--no-color"));
    Session session = new Session(console, stop, Clock.system(ZoneId.systemDefault()), Path.of(""));
    int exitCode = RigmorrowCommand.run(arguments, session, new VersionFromBuild());
    stop.commandEnds(exitCode);
    System.exit(exitCode);
  }

  /**
   * Runs the command line in this JVM.
   *
   * @param args as for the program
   * @param out for data
   * @param err for progress and errors
   * @return the exit code: 0 done, 1 a fault of the program, 2 bad input or usage, 3 no workable
   *     plan
   */
  public static int run(String[] args, PrintStream out, PrintStream err) {
    Session session =
        new Session(
            Console.plain(out, err),
            new EarlyStop(),
            Clock.system(ZoneId.systemDefault()),
            Path.of(""));
    return RigmorrowCommand.run(List.of(args), session, new VersionFromBuild());
  }
}
