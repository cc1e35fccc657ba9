package rigmorrow.benchmarks.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import rigmorrow.benchmarks.instance.Instance;
import rigmorrow.benchmarks.peer.Peer;
import rigmorrow.benchmarks.report.Report;
import rigmorrow.benchmarks.run.CellFile;
import rigmorrow.benchmarks.run.RunSettings;
import rigmorrow.benchmarks.run.Runner;
import rigmorrow.data.problem.InputException;

/** The folder of one run. */
final class OutputFolder {
  private final Path folder;
  private final PrintStream out;

  OutputFolder(Path folder, PrintStream out) {
    this.folder = folder;
    this.out = out;
  }

  /** Runs what is left to run, then reports; gives the exit code. */
  int run(List<Instance> instances, List<Peer> peers, RunSettings settings, PrintStream err)
      throws IOException, InputException {
    Files.createDirectories(folder);
    new Runner(instances, peers, settings, new CellFile(folder), err).run();
    return report();
  }

  /** Writes the report of the cells that are there; gives the exit code. */
  int report() throws IOException, InputException {
    Report report = Report.of(new CellFile(folder).read());
    report.write(folder);
    out.print(report.text());
    out.flush();
    return report.allWorkable() ? ExitCodes.DONE : ExitCodes.UNWORKABLE;
  }
}
