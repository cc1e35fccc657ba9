package rigmorrow.benchmarks.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import rigmorrow.benchmarks.compare.Results;
import rigmorrow.benchmarks.run.Cell;

/** Mean gap of each peer: on each instance, or in each group where there are too many. */
final class GapChart {
  private static final int MOST_ROWS = 60;
  private static final int ROW = 20;
  private static final int TOP = 36;
  private static final int LEFT = 140;
  private static final int RIGHT = Canvas.WIDTH - 16;

  private final Results results;
  private final boolean groups;
  private final List<String> names;

  private GapChart(Results results) {
    this.results = results;
    this.groups = results.instances().size() > MOST_ROWS;
    this.names = groups ? results.groups() : results.instances();
  }

  /** The chart; empty when no plan has a gap. */
  static Optional<Chart> of(Results results) {
    return new GapChart(results).chart();
  }

  private Optional<Chart> chart() {
    List<List<OptionalDouble>> values = names.stream().map(this::row).toList();
    double[] known =
        values.stream().flatMap(List::stream).flatMapToDouble(OptionalDouble::stream).toArray();
    if (known.length == 0) {
      return Optional.empty();
    }
    double least = Math.min(1, java.util.Arrays.stream(known).min().orElse(1));
    double most = Math.max(1.02, java.util.Arrays.stream(known).max().orElse(1));
    Axis axis = new Axis(Math.max(0.01, least), most, LEFT + 8, RIGHT);
    int bottom = TOP + ROW * names.size();
    Canvas canvas = new Canvas();
    List<Integer> all = IntStream.range(0, results.peers().size()).boxed().toList();
    canvas.legend(results.peers(), all, false, LEFT, 20);
    Charts.ticks(canvas, axis, TOP, bottom);
    for (int i = 0; i < names.size(); i++) {
      double y = TOP + ROW * (i + 0.5);
      canvas.line("grid", LEFT, y, RIGHT, y);
      canvas.text("word", LEFT - 8, y + 4, "end", cut(names.get(i)));
      for (int peer = values.get(i).size() - 1; peer >= 0; peer--) {
        OptionalDouble value = values.get(i).get(peer);
        if (value.isPresent() && value.getAsDouble() > 0) {
          canvas.mark(peer, axis.place(value.getAsDouble()), y);
        }
      }
    }
    canvas.text("word", (LEFT + RIGHT) / 2.0, bottom + 36, "middle", "times the best");
    return Optional.of(
        new Chart(
            "gaps",
            groups ? "Distance to the best in each group" : "Distance to the best on each instance",
            "A row for each; a mark for each peer at the mean of its points as a multiple of the best."
                + " No mark: no plan that can be compared, because all leave out more than the best.",
            bottom + 44,
            canvas.shapes(),
            heads(),
            rows(values)));
  }

  private List<OptionalDouble> row(String name) {
    return results.peers().stream()
        .map(peer -> mean(groups ? ofGroup(name, peer) : results.cells(name, peer)))
        .toList();
  }

  private List<Cell> ofGroup(String group, String peer) {
    return results.cells(peer).stream().filter(cell -> cell.group().equals(group)).toList();
  }

  private OptionalDouble mean(List<Cell> cells) {
    OptionalDouble percent = results.meanGapPercent(cells);
    return percent.isEmpty() ? percent : OptionalDouble.of(1 + percent.getAsDouble() / 100);
  }

  private List<String> heads() {
    List<String> heads = new ArrayList<>(List.of(groups ? "group" : "instance"));
    results.peers().forEach(peer -> heads.add(peer + ", %"));
    return heads;
  }

  private List<List<String>> rows(List<List<OptionalDouble>> values) {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      List<String> row = new ArrayList<>(List.of(names.get(i)));
      for (OptionalDouble value : values.get(i)) {
        row.add(
            value.isEmpty()
                ? "-"
                : String.format(Locale.ROOT, "%,.2f", 100 * (value.getAsDouble() - 1)));
      }
      rows.add(row);
    }
    return rows;
  }

  private static String cut(String name) {
    return name.length() <= 19 ? name : name.substring(0, 18) + "…";
  }
}
