package rigmorrow.benchmarks.report;

import java.util.List;
import rigmorrow.benchmarks.chart.Chart;

/**
 * What the page shows.
 *
 * @param run what was run, in a sentence
 * @param warnings what must be known before any number is read
 * @param heads of the table of peers
 * @param rows a peer each
 * @param charts each with its table
 */
record ReportPage(
    String run,
    List<String> warnings,
    List<String> heads,
    List<List<String>> rows,
    List<Chart> charts) {
  ReportPage {
    warnings = List.copyOf(warnings);
    heads = List.copyOf(heads);
    rows = rows.stream().map(List::copyOf).toList();
    charts = List.copyOf(charts);
  }
}
