package rigmorrow.benchmarks.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rigmorrow.benchmarks.instance.Instance;
import rigmorrow.benchmarks.instance.LiteratureFolder;
import rigmorrow.benchmarks.instance.LiteratureFolder.LiteratureSet;

/** Published instances. */
@Command(
    name = "literature",
    description = "Plans published instances and compares with their best known values.")
final class LiteratureCommand implements Callable<Integer> {
  @Mixin HelpOption help;

  private static final int SEEDS = 1;
  private static final int CORES = 1;

  private final PrintStream out;
  private final PrintStream err;

  @Option(
      names = "--reference",
      paramLabel = "FOLDER",
      defaultValue = "../shared/reference",
      description = "The folder with the instances (default: ${DEFAULT-VALUE}).")
  private Path reference;

  @Option(
      names = "--sets",
      paramLabel = "A,B",
      split = ",",
      defaultValue = "small,large,tardiness",
      description = "Which of ${COMPLETION-CANDIDATES} (default: all).")
  private List<LiteratureSet> sets;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      defaultValue = "out/literature",
      description = "For results; an interrupted run goes on (default: ${DEFAULT-VALUE}).")
  private Path output;

  @Mixin private RunOptions options;

  LiteratureCommand(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  @Override
  public Integer call() throws Exception {
    var settings = options.settings(SEEDS, CORES);
    var peers = options.chosenPeers();
    List<Instance> instances = new ArrayList<>();
    for (LiteratureSet set : sets.stream().distinct().toList()) {
      instances.addAll(LiteratureFolder.read(reference, set));
    }
    return new OutputFolder(output, out).run(options.chosen(instances), peers, settings, err);
  }
}
