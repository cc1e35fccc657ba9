package rigmorrow.benchmarks.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rigmorrow.benchmarks.instance.Instance;
import rigmorrow.data.BatchFolder;

/** Past days of a floor. */
@Command(
    name = "days",
    description = "Plans past days of a floor, each in files as a planner has them.")
final class DaysCommand implements Callable<Integer> {
  @Mixin HelpOption help;

  private static final String GROUP = "all days";
  private static final int SEEDS = 5;
  private static final int CORES = 2;

  private final PrintStream out;
  private final PrintStream err;

  @Option(
      names = "--folder",
      paramLabel = "FOLDER",
      defaultValue = "benchmarks/batches",
      description = "A folder with a folder for each day (default: ${DEFAULT-VALUE}).")
  private Path folder;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      defaultValue = "out/days",
      description = "For results; an interrupted run goes on (default: ${DEFAULT-VALUE}).")
  private Path output;

  @Mixin private RunOptions options;

  DaysCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public Integer call() throws Exception {
    var settings = options.settings(SEEDS, CORES);
    var peers = options.chosenPeers();
    BatchFolder.Reading reading = BatchFolder.read(folder);
    if (!reading.refused().isEmpty()) {
      reading.refused().forEach(refused -> err.println(refused.getMessage()));
      return ExitCodes.BAD_INPUT;
    }
    List<Instance> instances =
        reading.days().stream()
            .map(day -> new Instance(day.name(), GROUP, null, null, day::batch))
            .toList();
    return new OutputFolder(output, out).run(options.chosen(instances), peers, settings, err);
  }
}
