package rigmorrow.benchmarks.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import rigmorrow.benchmarks.run.Cell;
import rigmorrow.benchmarks.run.Peers;

/**
 * What a run says of one peer.
 *
 * @param peer name
 * @param cells that it has
 * @param unworkable of them
 * @param withoutGap of them, the unworkable among them
 * @param meanGapPercent over the others; null when there are none
 * @param wins cells in which ours is the better one; as with ties and losses, none for ours
 * @param ties cells in which both come to the same
 * @param losses cells in which the peer is the better one
 * @param ratio of our points to the peer's; null when no instance allows one
 * @param overTime cells that took notably longer than allowed
 */
public record PeerSummary(
    String peer,
    int cells,
    int unworkable,
    int withoutGap,
    @Nullable Double meanGapPercent,
    int wins,
    int ties,
    int losses,
    @Nullable Interval ratio,
    int overTime) {
  private static final double OVER_SHARE = 1.05;
  private static final long OVER_MILLIS = 250;

  /** True for our own search. */
  public boolean ours() {
    return peer.equals(Peers.OURS);
  }

  /** Of every peer of a run, in the order of tables. */
  public static List<PeerSummary> all(Results results) {
    return results.peers().stream().map(peer -> of(results, peer)).toList();
  }

  private static PeerSummary of(Results results, String peer) {
    List<Cell> cells = results.cells(peer);
    OptionalDouble gap = results.meanGapPercent(cells);
    int[] outcomes = outcomes(results, peer);
    List<Double> ratios = peer.equals(Peers.OURS) ? List.of() : ratios(results, peer);
    return new PeerSummary(
        peer,
        cells.size(),
        (int) cells.stream().filter(cell -> !cell.workable()).count(),
        (int) cells.stream().filter(cell -> results.timesBest(cell).isEmpty()).count(),
        gap.isEmpty() ? null : gap.getAsDouble(),
        outcomes[0],
        outcomes[1],
        outcomes[2],
        ratios.isEmpty() ? null : Interval.of(ratios),
        (int) cells.stream().filter(PeerSummary::overTime).count());
  }

  private static boolean overTime(Cell cell) {
    long limit = cell.effort().limitMillis();
    return limit > 0 && cell.millis() > limit * OVER_SHARE + OVER_MILLIS;
  }

  /** How often ours wins, ties and loses; cells of which only one is there yet do not count. */
  private static int[] outcomes(Results results, String peer) {
    int[] outcomes = new int[3];
    if (peer.equals(Peers.OURS)) {
      return outcomes;
    }
    for (Cell theirs : results.cells(peer)) {
      for (Cell ours : results.cells(theirs.instance(), Peers.OURS)) {
        if (ours.seed() == theirs.seed()) {
          outcomes[1 + Integer.signum(compare(ours, theirs))]++;
        }
      }
    }
    return outcomes;
  }

  private static int compare(Cell ours, Cell theirs) {
    if (!ours.workable() || !theirs.workable()) {
      return Boolean.compare(theirs.workable(), ours.workable());
    }
    return ours.score().compareTo(theirs.score());
  }

  /** Our mean points over the peer's, for each instance on which they can be compared. */
  static List<Double> ratios(Results results, String peer) {
    List<Double> ratios = new ArrayList<>();
    for (String instance : results.instances()) {
      List<Cell> ours = results.cells(instance, Peers.OURS);
      List<Cell> theirs = results.cells(instance, peer);
      if (!ours.isEmpty()
          && !theirs.isEmpty()
          && ours.stream().allMatch(Cell::workable)
          && theirs.stream().allMatch(Cell::workable)
          && mean(ours, true) == mean(theirs, true)
          && mean(ours, false) > 0
          && mean(theirs, false) > 0) {
        ratios.add(mean(ours, false) / mean(theirs, false));
      }
    }
    return ratios;
  }

  private static double mean(List<Cell> cells, boolean leftOut) {
    return cells.stream()
        .mapToLong(cell -> leftOut ? cell.score().leftOut() : cell.score().soft())
        .average()
        .orElse(0);
  }
}
