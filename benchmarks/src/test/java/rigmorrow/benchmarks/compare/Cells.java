package rigmorrow.benchmarks.compare;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.benchmarks.run.Cell;
import rigmorrow.benchmarks.run.Moment;
import rigmorrow.benchmarks.run.Score;

/** Made-up cells. */
public final class Cells {
  private Cells() {}

  /** A workable cell that leaves something out, or nothing. */
  public static Cell cell(String instance, long seed, String peer, long leftOut, long soft) {
    return cell(instance, seed, peer, new Score(0, leftOut, soft), null, 0, List.of());
  }

  /** A cell with everything that counts. */
  public static Cell cell(
      String instance,
      long seed,
      String peer,
      Score score,
      @Nullable Long bestKnown,
      int breaches,
      List<Moment> course) {
    return new Cell(
        instance,
        "group of " + instance,
        bestKnown,
        3,
        2,
        seed,
        peer,
        new Cell.Effort(1000, 0, 1),
        score,
        new Cell.Parts(0, 0, score.soft(), 0, 0),
        breaches,
        900,
        course);
  }
}
