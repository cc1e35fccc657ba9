package rigmorrow.benchmarks.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import rigmorrow.benchmarks.compare.Curve;
import rigmorrow.benchmarks.compare.Interval;
import rigmorrow.benchmarks.compare.PeerSummary;
import rigmorrow.benchmarks.compare.Results;
import rigmorrow.benchmarks.run.Moment;

/** The charts of a run. */
public final class Charts {
  private static final int LEFT = 104;
  private static final int RIGHT = Canvas.WIDTH - 16;
  private static final int ROW = 34;

  private final Results results;
  private final List<String> peers;

  private Charts(Results results) {
    this.results = results;
    this.peers = results.peers();
  }

  /** Every chart for which the run has figures. */
  public static List<Chart> of(Results results, List<PeerSummary> summaries) {
    Charts charts = new Charts(results);
    List<Chart> all = new ArrayList<>();
    List<PeerSummary> others = summaries.stream().filter(one -> !one.ours()).toList();
    if (others.size() < summaries.size() && !others.isEmpty()) {
      all.add(charts.outcomes(others));
      if (others.stream().anyMatch(one -> one.ratio() != null)) {
        all.add(charts.intervals(others));
      }
    }
    List<Curve> curves = Curve.all(results);
    if (!curves.isEmpty()) {
      all.add(charts.overTime(curves));
    }
    GapChart.of(results).ifPresent(all::add);
    return all;
  }

  private Chart outcomes(List<PeerSummary> others) {
    Canvas canvas = new Canvas();
    List<List<String>> rows = new ArrayList<>();
    int y = 34;
    key(canvas);
    for (PeerSummary one : others) {
      double all = Math.max(1, one.wins() + one.ties() + one.losses());
      double scale = (RIGHT - LEFT) / all;
      canvas.text("word", LEFT - 8, y + 17, "end", one.peer());
      double x = LEFT;
      x = part(canvas, "win", x, y, one.wins() * scale, one.wins());
      x = part(canvas, "tie", x, y, one.ties() * scale, one.ties());
      part(canvas, "loss", x, y, one.losses() * scale, one.losses());
      rows.add(List.of(one.peer(), "" + one.wins(), "" + one.ties(), "" + one.losses()));
      y += ROW;
    }
    return new Chart(
        "outcomes",
        "Ours wins, ties, loses",
        "A bar for each peer, divided by how often our plan of the same instance and seed is the"
            + " better one, equal, and the worse one.",
        y + 4,
        canvas.shapes(),
        List.of("peer", "ours wins", "ties", "ours loses"),
        rows);
  }

  private static void key(Canvas canvas) {
    String[] looks = {"win", "tie", "loss"};
    String[] words = {"ours wins", "tie", "ours loses"};
    double x = LEFT;
    for (int i = 0; i < looks.length; i++) {
      canvas.bar("bar " + looks[i], x, 8, 14, 14);
      canvas.text("word", x + 20, 20, "start", words[i]);
      x += 40 + 7.2 * words[i].length();
    }
  }

  private static double part(
      Canvas canvas, String look, double x, double y, double width, int count) {
    if (count > 0) {
      canvas.bar("bar " + look, x, y, width, 24);
      if (width > 26) {
        canvas.text("count " + look + "word", x + width / 2, y + 17, "middle", "" + count);
      }
    }
    return x + width;
  }

  private Chart intervals(List<PeerSummary> others) {
    Canvas canvas = new Canvas();
    List<PeerSummary> shown = others.stream().filter(one -> one.ratio() != null).toList();
    List<Interval> known = shown.stream().map(PeerSummary::ratio).toList();
    double least = known.stream().mapToDouble(Interval::low).min().orElse(1);
    double most = known.stream().mapToDouble(Interval::high).max().orElse(1);
    Axis axis = new Axis(Math.min(1, least), Math.max(1, most), LEFT + 8, RIGHT);
    int bottom = 12 + ROW * shown.size();
    ticks(canvas, axis, 8, bottom);
    canvas.line("even", axis.place(1), 8, axis.place(1), bottom);
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < shown.size(); i++) {
      Interval interval = known.get(i);
      int peer = peers.indexOf(shown.get(i).peer());
      double y = 12 + ROW * (i + 0.5);
      canvas.text("word", LEFT - 8, y + 5, "end", shown.get(i).peer());
      double low = axis.place(interval.low());
      double high = axis.place(interval.high());
      canvas.line("whisker", low, y, high, y);
      canvas.line("whisker", low, y - 5, low, y + 5);
      canvas.line("whisker", high, y - 5, high, y + 5);
      canvas.mark(peer, axis.place(interval.mean()), y);
      rows.add(
          List.of(
              shown.get(i).peer(),
              ratio(interval.mean()),
              ratio(interval.low()),
              ratio(interval.high()),
              "" + interval.count()));
    }
    canvas.text(
        "word", (LEFT + RIGHT) / 2.0, bottom + 36, "middle", "left of 1: ours has fewer points");
    return new Chart(
        "intervals",
        "Our points to the peer's, with 95 % intervals",
        "For each peer the geometric mean over the instances of our points divided by the peer's,"
            + " with its bootstrap interval. Below 1, ours is better.",
        bottom + 44,
        canvas.shapes(),
        List.of("peer", "ratio", "from", "to", "instances"),
        rows);
  }

  private Chart overTime(List<Curve> curves) {
    Canvas canvas = new Canvas();
    List<Long> limits =
        results.cells().stream().map(cell -> cell.effort().limitMillis()).distinct().toList();
    boolean seconds = limits.size() == 1;
    List<Long> grid = Moment.grid(seconds ? limits.get(0) : 100_000);
    List<Double> times = grid.stream().map(millis -> millis / 1000.0).toList();
    Axis across = new Axis(times.get(0), times.get(times.size() - 1), LEFT, RIGHT - 8);
    double most =
        curves.stream()
            .flatMap(curve -> curve.timesBest().stream())
            .mapToDouble(x -> x)
            .max()
            .orElse(1);
    double least =
        curves.stream()
            .flatMap(curve -> curve.timesBest().stream())
            .mapToDouble(x -> x)
            .min()
            .orElse(1);
    int bottom = 340;
    Axis up = new Axis(Math.min(1, least), Math.max(1.02, most), bottom, 36);
    for (double tick : up.ticks()) {
      canvas.line("grid", LEFT, up.place(tick), RIGHT, up.place(tick));
      canvas.text("tick", LEFT - 6, up.place(tick) + 4, "end", Axis.label(tick) + " x best");
    }
    ticks(canvas, across, 36, bottom);
    List<Integer> shown = curves.stream().map(curve -> peers.indexOf(curve.peer())).toList();
    canvas.legend(peers, shown, true, LEFT, 20);
    for (Curve curve : curves) {
      int peer = peers.indexOf(curve.peer());
      double[] points = new double[2 * curve.timesBest().size()];
      for (int i = 0; i < curve.timesBest().size(); i++) {
        points[2 * i] = across.place(times.get(curve.first() + i));
        points[2 * i + 1] = up.place(curve.timesBest().get(i));
      }
      canvas.curve(peer, points);
      canvas.mark(peer, points[points.length - 2], points[points.length - 1]);
    }
    String unit = seconds ? "seconds" : "% of the time limit";
    canvas.text("word", (LEFT + RIGHT) / 2.0, bottom + 38, "middle", unit);
    return new Chart(
        "time",
        "Score over time",
        "For each peer the median plan over the seeds at each moment, as a multiple of the best"
            + " points of the instance, geometric mean over the instances. A peer without a curve has no"
            + " plan that can be compared at the end.",
        bottom + 46,
        canvas.shapes(),
        heads(times, unit),
        rows(curves, times));
  }

  private static final int TABLE_EVERY = 4;

  private static List<Integer> shownMoments(int count) {
    return IntStream.range(0, count)
        .filter(i -> (count - 1 - i) % TABLE_EVERY == 0)
        .boxed()
        .toList();
  }

  private static List<String> heads(List<Double> times, String unit) {
    List<String> heads = new ArrayList<>(List.of("peer", "instances"));
    shownMoments(times.size())
        .forEach(i -> heads.add(Axis.label(times.get(i)) + (unit.equals("seconds") ? " s" : " %")));
    return heads;
  }

  private static List<List<String>> rows(List<Curve> curves, List<Double> times) {
    List<List<String>> rows = new ArrayList<>();
    for (Curve curve : curves) {
      List<String> row = new ArrayList<>(List.of(curve.peer(), "" + curve.instances()));
      for (int i : shownMoments(times.size())) {
        row.add(i < curve.first() ? "-" : ratio(curve.timesBest().get(i - curve.first())));
      }
      rows.add(row);
    }
    return rows;
  }

  /** Lines and labels of an axis that goes across. */
  static void ticks(Canvas canvas, Axis axis, double top, double bottom) {
    for (double tick : axis.ticks()) {
      canvas.line("grid", axis.place(tick), top, axis.place(tick), bottom);
      canvas.text("tick", axis.place(tick), bottom + 16, "middle", Axis.label(tick));
    }
  }

  static String ratio(double value) {
    return String.format(Locale.ROOT, "%.3f", value);
  }
}
