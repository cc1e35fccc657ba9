package rigmorrow.benchmarks.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import rigmorrow.benchmarks.compare.PeerSummary;
import rigmorrow.benchmarks.compare.Results;
import rigmorrow.benchmarks.run.Cell;
import rigmorrow.data.SafeFile;

/** What a run came to, in every form. */
public final class Report {
  private final Results results;
  private final List<PeerSummary> summaries;

  private Report(Results results) {
    this.results = results;
    this.summaries = PeerSummary.all(results);
  }

  /** The report of a run, finished or not. */
  public static Report of(List<Cell> cells) {
    return new Report(new Results(cells));
  }

  /** True when no plan breaks a hard rule. */
  public boolean allWorkable() {
    return results.cells().stream().allMatch(Cell::workable);
  }

  /** For a terminal of 80 columns. */
  public String text() {
    return TextReport.of(results, summaries);
  }

  /**
   * Writes text, table and page into a folder; replaces older ones.
   *
   * @throws IOException when they cannot be written
   */
  public void write(Path folder) throws IOException {
    SafeFile.write(folder.resolve("report.txt"), text(), SafeFile.Existing.REPLACE);
    SafeFile.write(
        folder.resolve("summary.csv"), SummaryCsv.of(summaries), SafeFile.Existing.REPLACE);
    SafeFile.write(
        folder.resolve("report.html"),
        HtmlReport.of(results, summaries),
        SafeFile.Existing.REPLACE);
  }
}
