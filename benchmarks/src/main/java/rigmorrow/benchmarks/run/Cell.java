package rigmorrow.benchmarks.run;

import java.util.Iterator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What came of one instance, one seed and one peer: a line of the file of results.
 *
 * @param instance name
 * @param group of the instance
 * @param bestKnown points from outside; null when none are known
 * @param jobs of the shot list
 * @param rigs of the floor
 * @param seed of the search
 * @param peer name
 * @param effort what it was allowed
 * @param score of the plan, as the decoder times it
 * @param parts of the score and what else is worth knowing
 * @param breaches of hard rules that the checker found; 0 for a workable plan
 * @param millis that it took
 * @param course how the score fell; empty when no clock limited the search
 */
public record Cell(
    String instance,
    String group,
    @Nullable Long bestKnown,
    int jobs,
    int rigs,
    long seed,
    String peer,
    Effort effort,
    Score score,
    Parts parts,
    int breaches,
    long millis,
    List<Moment> course) {
  /** Heads of the columns, in order. */
  static final List<String> HEADS =
      List.of(
          "instance",
          "group",
          "best_known",
          "jobs",
          "rigs",
          "seed",
          "peer",
          "limit_ms",
          "steps",
          "cores",
          "hard",
          "left_out_points",
          "soft_points",
          "lateness_points",
          "changeover_points",
          "finishing_points",
          "left_out_jobs",
          "late_jobs",
          "breaches",
          "took_ms",
          "course");

  public Cell {
    course = List.copyOf(course);
  }

  /**
   * What a search was allowed.
   *
   * @param limitMillis wall time, 0 for no limit
   * @param steps decodes, 0 for no limit
   * @param cores it might use
   */
  public record Effort(long limitMillis, long steps, int cores) {
    @Override
    public String toString() {
      String limit = steps > 0 ? steps + " decodes" : limitMillis + " ms";
      return limit + ", cores " + cores;
    }
  }

  /**
   * What a plan's points are made of.
   *
   * @param latenessPoints for minutes after promises
   * @param changeoverPoints for changeover minutes
   * @param finishingPoints for the finishing time
   * @param leftOut number of jobs left out
   * @param lateJobs number of jobs after their promise
   */
  public record Parts(
      long latenessPoints,
      long changeoverPoints,
      long finishingPoints,
      int leftOut,
      int lateJobs) {}

  /** True when no hard rule is broken, in the eyes of the decoder and of the checker. */
  public boolean workable() {
    return score.hard() == 0 && breaches == 0;
  }

  /** Which cell of a run it is. */
  Key key() {
    return new Key(instance, seed, peer);
  }

  /** Names a cell of a run. */
  record Key(String instance, long seed, String peer) {}

  /** The line's cells, in the order of {@link #HEADS}. */
  List<String> row() {
    return List.of(
        instance,
        group,
        bestKnown == null ? "" : "" + bestKnown,
        "" + jobs,
        "" + rigs,
        "" + seed,
        peer,
        "" + effort.limitMillis,
        "" + effort.steps,
        "" + effort.cores,
        "" + score.hard(),
        "" + score.leftOut(),
        "" + score.soft(),
        "" + parts.latenessPoints,
        "" + parts.changeoverPoints,
        "" + parts.finishingPoints,
        "" + parts.leftOut,
        "" + parts.lateJobs,
        "" + breaches,
        "" + millis,
        Moment.text(course));
  }

  /**
   * Reads a line.
   *
   * @throws IllegalArgumentException when it is none
   */
  static Cell of(List<String> row) {
    if (row.size() != HEADS.size()) {
      throw new IllegalArgumentException(row.size() + " cells in place of " + HEADS.size());
    }
    Iterator<String> in = row.iterator();
    String instance = in.next();
    String group = in.next();
    String best = in.next();
    return new Cell(
        instance,
        group,
        best.isEmpty() ? null : Long.valueOf(best),
        whole(in),
        whole(in),
        Long.parseLong(in.next()),
        in.next(),
        new Effort(Long.parseLong(in.next()), Long.parseLong(in.next()), whole(in)),
        new Score(Long.parseLong(in.next()), Long.parseLong(in.next()), Long.parseLong(in.next())),
        new Parts(
            Long.parseLong(in.next()),
            Long.parseLong(in.next()),
            Long.parseLong(in.next()),
            whole(in),
            whole(in)),
        whole(in),
        Long.parseLong(in.next()),
        Moment.parse(in.next()));
  }

  private static int whole(Iterator<String> in) {
    return Integer.parseInt(in.next());
  }
}
