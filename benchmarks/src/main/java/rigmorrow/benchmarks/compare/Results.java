package rigmorrow.benchmarks.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import rigmorrow.benchmarks.peer.Peer;
import rigmorrow.benchmarks.run.Cell;
import rigmorrow.benchmarks.run.Peers;
import rigmorrow.benchmarks.run.Score;

/** The cells of a run with the best of each instance. */
public final class Results {
  private final List<Cell> cells;
  private final List<String> peers;
  private final Map<String, List<Cell>> byInstance = new LinkedHashMap<>();
  private final Map<String, Score> best = new LinkedHashMap<>();

  /**
   * @param cells of a run, finished or not
   */
  public Results(List<Cell> cells) {
    this.cells = List.copyOf(cells);
    List<String> order = Peers.all().stream().map(Peer::name).toList();
    this.peers =
        cells.stream()
            .map(Cell::peer)
            .distinct()
            .sorted(
                Comparator.comparingInt(
                        (String name) -> order.contains(name) ? order.indexOf(name) : order.size())
                    .thenComparing(Comparator.naturalOrder()))
            .toList();
    for (Cell cell : cells) {
      byInstance.computeIfAbsent(cell.instance(), name -> new ArrayList<>()).add(cell);
    }
    byInstance.forEach(
        (name, all) -> {
          Score known = bestOf(all);
          if (known != null) {
            best.put(name, known);
          }
        });
  }

  private static @Nullable Score bestOf(List<Cell> all) {
    Long known = all.get(0).bestKnown();
    if (known != null) {
      return new Score(0, 0, known);
    }
    return all.stream()
        .filter(Cell::workable)
        .map(Cell::score)
        .min(Comparator.naturalOrder())
        .orElse(null);
  }

  /** Every cell. */
  public List<Cell> cells() {
    return cells;
  }

  /** Names of the peers, ours first. */
  public List<String> peers() {
    return peers;
  }

  /** Names of the instances, in the order of the run. */
  public List<String> instances() {
    return List.copyOf(byInstance.keySet());
  }

  /** Names of the groups, in the order of the run. */
  public List<String> groups() {
    return cells.stream().map(Cell::group).distinct().toList();
  }

  /** A peer's cells of one instance. */
  public List<Cell> cells(String instance, String peer) {
    return byInstance.getOrDefault(instance, List.of()).stream()
        .filter(cell -> cell.peer().equals(peer))
        .toList();
  }

  /** A peer's cells. */
  public List<Cell> cells(String peer) {
    return cells.stream().filter(cell -> cell.peer().equals(peer)).toList();
  }

  /** The best known score of an instance, or the best of the run; null when there is no plan. */
  public @Nullable Score best(String instance) {
    return best.get(instance);
  }

  /** How often a plan's points hold the best ones; empty for a plan without a gap. */
  public OptionalDouble timesBest(Cell cell) {
    return cell.workable() ? timesBest(cell.instance(), cell.score()) : OptionalDouble.empty();
  }

  /**
   * How often a score's points hold the best ones of an instance; empty when it breaks something,
   * leaves out more, or when the best is 0 and it is not.
   */
  OptionalDouble timesBest(String instance, Score score) {
    Score known = best.get(instance);
    if (known == null || score.hard() > 0 || score.leftOut() > known.leftOut()) {
      return OptionalDouble.empty();
    }
    if (known.soft() == 0) {
      return score.soft() == 0 ? OptionalDouble.of(1) : OptionalDouble.empty();
    }
    return OptionalDouble.of(score.soft() / (double) known.soft());
  }

  /** The mean gap of some cells in percent; empty when none has one. */
  public OptionalDouble meanGapPercent(List<Cell> some) {
    OptionalDouble mean =
        some.stream().map(this::timesBest).flatMapToDouble(OptionalDouble::stream).average();
    return mean.isEmpty() ? mean : OptionalDouble.of(100 * (mean.getAsDouble() - 1));
  }
}
