package rigmorrow.solver.search;

import java.time.Duration;
import org.jspecify.annotations.Nullable;

/** How much a search may still do, in time or in decodes, and how far it has come. */
final class Effort {
  /** What judging so many changes costs beside their decodes counts as one decode. */
  private static final int JUDGED_FOR_A_DECODE = 16;

  private final long begin;
  private final long nanos;
  private final long decodes;

  /**
   * @param begin {@link System#nanoTime()} at which the time began to run
   * @param time wall time; null for none
   * @param decodes 0 for none
   */
  Effort(long begin, @Nullable Duration time, long decodes) {
    this.begin = begin;
    this.nanos = time == null ? 0 : Math.max(1, time.toNanos());
    this.decodes = decodes;
  }

  /** About how many decodes it allows, judged by those so far. */
  double expectedDecodes(Judge judge) {
    double spent = spent(judge);
    return spent == 0 ? decodes : judge.decodes() / spent;
  }

  /** From 0 at the start to 1 or more when the effort is spent. */
  double spent(Judge judge) {
    double spent = 0;
    if (decodes > 0) {
      double done = judge.decodes() + judge.judged() / (double) JUDGED_FOR_A_DECODE;
      spent = done / decodes;
    }
    return nanos == 0 ? spent : Math.max(spent, (System.nanoTime() - begin) / (double) nanos);
  }
}
