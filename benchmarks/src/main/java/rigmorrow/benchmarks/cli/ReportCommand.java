package rigmorrow.benchmarks.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The report again, from the cells of a run; of an unfinished run too. */
@Command(name = "report", description = "Writes a run's report again, of an unfinished one too.")
final class ReportCommand implements Callable<Integer> {
  @Mixin HelpOption help;

  private final PrintStream out;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      required = true,
      description = "The folder of the run, with its cells.csv.")
  private Path folder;

  ReportCommand(PrintStream out) {
    this.out = out;
  }

  @Override
  public Integer call() throws Exception {
    return new OutputFolder(folder, out).report();
  }
}
