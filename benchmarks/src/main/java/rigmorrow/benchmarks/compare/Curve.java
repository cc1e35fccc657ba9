package rigmorrow.benchmarks.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import rigmorrow.benchmarks.run.Cell;
import rigmorrow.benchmarks.run.Moment;
import rigmorrow.benchmarks.run.Score;

/**
 * How one peer's plans got better over time.
 *
 * @param peer name
 * @param instances it stands for
 * @param first index of the first moment at which all of them have a comparable plan
 * @param timesBest how often the points hold the best ones, from that moment on; geometric means
 */
public record Curve(String peer, int instances, int first, List<Double> timesBest) {
  public Curve {
    timesBest = List.copyOf(timesBest);
  }

  /** One of each peer that has one. */
  public static List<Curve> all(Results results) {
    List<Curve> curves = new ArrayList<>();
    for (String peer : results.peers()) {
      Curve curve = of(results, peer);
      if (curve != null) {
        curves.add(curve);
      }
    }
    return curves;
  }

  private static @Nullable Curve of(Results results, String peer) {
    List<List<OptionalDouble>> rows = new ArrayList<>();
    for (String instance : results.instances()) {
      List<Cell> cells = results.cells(instance, peer);
      Score best = results.best(instance);
      boolean measurable = best != null && best.soft() > 0;
      if (measurable && !cells.isEmpty() && cells.stream().noneMatch(Curve::unclocked)) {
        List<OptionalDouble> row = row(results, instance, cells);
        if (row.get(Moment.COUNT - 1).isPresent()) {
          rows.add(row);
        }
      }
    }
    if (rows.isEmpty()) {
      return null;
    }
    int first = 0;
    List<Double> means = new ArrayList<>();
    for (int at = 0; at < Moment.COUNT; at++) {
      OptionalDouble mean = geometricMean(rows, at);
      if (mean.isPresent()) {
        means.add(mean.getAsDouble());
      } else {
        // A plan may be ahead for a while by breaking nothing and leaving out more.
        first = at + 1;
        means.clear();
      }
    }
    return new Curve(peer, rows.size(), first, means);
  }

  private static boolean unclocked(Cell cell) {
    return cell.course().isEmpty();
  }

  private static OptionalDouble geometricMean(List<List<OptionalDouble>> rows, int at) {
    double sum = 0;
    for (List<OptionalDouble> row : rows) {
      OptionalDouble one = row.get(at);
      if (one.isEmpty() || one.getAsDouble() <= 0) {
        return OptionalDouble.empty();
      }
      sum += Math.log(one.getAsDouble());
    }
    return OptionalDouble.of(Math.exp(sum / rows.size()));
  }

  /** The median over the seeds at each moment, as a part of the best. */
  private static List<OptionalDouble> row(Results results, String instance, List<Cell> cells) {
    List<OptionalDouble> row = new ArrayList<>();
    List<Long> grid = Moment.grid(cells.get(0).effort().limitMillis());
    for (long millis : grid) {
      List<Score> known =
          cells.stream().map(cell -> at(cell, millis)).sorted(Comparator.naturalOrder()).toList();
      row.add(results.timesBest(instance, known.get(known.size() / 2)));
    }
    return row;
  }

  /** The best score so far; one that breaks everything while there is none. */
  private static Score at(Cell cell, long millis) {
    Score best = new Score(Long.MAX_VALUE, 0, 0);
    for (Moment moment : cell.course()) {
      if (moment.millis() <= millis) {
        best = moment.score();
      }
    }
    return best;
  }
}
