package rigmorrow.benchmarks.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import rigmorrow.benchmarks.compare.PeerSummary;
import rigmorrow.benchmarks.compare.Results;
import rigmorrow.benchmarks.run.Cell;
import rigmorrow.benchmarks.run.Score;

/** The report for a terminal of 80 columns. */
final class TextReport {
  private static final int COLUMNS = 80;
  private static final int MOST_NAME = 24;

  private final Results results;
  private final StringBuilder text = new StringBuilder();

  private TextReport(Results results) {
    this.results = results;
  }

  static String of(Results results, List<PeerSummary> summaries) {
    TextReport report = new TextReport(results);
    report.head(summaries);
    report.peers(summaries);
    if (results.groups().size() > 1) {
      report.groups();
    }
    report.instances();
    return report.text.toString();
  }

  private void head(List<PeerSummary> summaries) {
    String run = Texts.run(results);
    int colon = run.indexOf(": ");
    line(run.substring(0, colon + 1));
    line(run.substring(colon + 2));
    Texts.warnings(summaries).forEach(this::line);
    line("");
  }

  private void peers(List<PeerSummary> summaries) {
    line("Gap: mean over plans, % above the best. Without: plans that have none.");
    line("Ratio: our points to the peer's, geometric mean over instances, 95 % bootstrap.");
    line("");
    line(
        String.format(
            Locale.ROOT,
            "%-12s%10s%8s%7s%6s%6s%7s  %-14s%5s",
            "peer",
            "gap %",
            "without",
            "we win",
            "tie",
            "lose",
            "ratio",
            "interval",
            "of"));
    for (PeerSummary one : summaries) {
      line(
          String.format(
              Locale.ROOT,
              "%-12s%10s%8d%7s%6s%6s%7s  %-14s%5s",
              one.peer(),
              Texts.percent(one.meanGapPercent()),
              one.withoutGap(),
              one.ours() ? "" : one.wins(),
              one.ours() ? "" : one.ties(),
              one.ours() ? "" : one.losses(),
              one.ours() ? "" : Texts.ratio(one.ratio()),
              one.ours() ? "" : Texts.range(one.ratio()),
              one.ratio() == null ? "" : one.ratio().count()));
    }
    line("");
  }

  private void groups() {
    line("Mean gap in each group, %");
    line("");
    table("group", results.groups(), group -> "", this::groupGap);
  }

  private void instances() {
    line("Mean gap on each instance, %; best: left-out points if any, then points");
    line("");
    table("instance", results.instances(), this::best, this::instanceGap);
  }

  private String best(String instance) {
    Score best = results.best(instance);
    if (best == null) {
      return "-";
    }
    return best.leftOut() == 0 ? "" + best.soft() : best.leftOut() + "/" + best.soft();
  }

  private String groupGap(String group, String peer) {
    List<Cell> cells =
        results.cells(peer).stream().filter(cell -> cell.group().equals(group)).toList();
    return gap(cells);
  }

  private String instanceGap(String instance, String peer) {
    return gap(results.cells(instance, peer));
  }

  /** A star stands where some plans have no gap, a dash where none has. */
  private String gap(List<Cell> cells) {
    boolean some = cells.stream().anyMatch(cell -> results.timesBest(cell).isEmpty());
    boolean none = cells.stream().allMatch(cell -> results.timesBest(cell).isEmpty());
    return Texts.percent(results.meanGapPercent(cells)) + (some && !none ? "*" : "");
  }

  private interface Entry {
    String of(String row, String peer);
  }

  /** Peers beside each other as far as 80 columns go, the others in a further table. */
  private void table(
      String head, List<String> rows, java.util.function.UnaryOperator<String> best, Entry entry) {
    List<String> cut = rows.stream().map(TextReport::cut).toList();
    int name = width(head, cut);
    List<String> bests = rows.stream().map(best).toList();
    boolean withBest = bests.stream().anyMatch(one -> !one.isEmpty());
    int bestWidth = withBest ? width("best", bests) : 0;
    List<List<String>> columns = new ArrayList<>();
    for (String peer : results.peers()) {
      List<String> column = new ArrayList<>(List.of(peer));
      rows.forEach(row -> column.add(entry.of(row, peer)));
      columns.add(column);
    }
    int from = 0;
    while (from < columns.size()) {
      int width = name + bestWidth;
      int to = from;
      while (to < columns.size() && (to == from || width + width(columns.get(to)) <= COLUMNS)) {
        width += width(columns.get(to++));
      }
      for (int row = 0; row <= rows.size(); row++) {
        StringBuilder line = new StringBuilder(left(row == 0 ? head : cut.get(row - 1), name - 2));
        if (withBest) {
          line.append(right(row == 0 ? "best" : bests.get(row - 1), bestWidth));
        }
        for (List<String> column : columns.subList(from, to)) {
          line.append(right(column.get(row), width(column)));
        }
        line(line.toString());
      }
      line("");
      from = to;
    }
  }

  private static String cut(String name) {
    return name.length() <= MOST_NAME ? name : name.substring(0, MOST_NAME - 1) + "~";
  }

  private static int width(String head, List<String> cells) {
    return 2 + Math.max(head.length(), cells.stream().mapToInt(String::length).max().orElse(0));
  }

  private static int width(List<String> cells) {
    return width("", cells);
  }

  private static String left(String cell, int width) {
    return cell + " ".repeat(Math.max(0, width - cell.length()));
  }

  private static String right(String cell, int width) {
    return " ".repeat(Math.max(0, width - cell.length())) + cell;
  }

  private void line(String line) {
    text.append(line.lines().map(String::stripTrailing).collect(Collectors.joining())).append('\n');
  }
}
