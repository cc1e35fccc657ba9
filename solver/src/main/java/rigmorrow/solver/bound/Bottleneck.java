package rigmorrow.solver.bound;

import java.util.Arrays;

/**
 * Something that jobs need and of which there is only so much: rigs, people, kit, a sample. What a
 * job takes of it is the least over all rigs that can take the job, so a plan may take more, never
 * less.
 *
 * @param time how much of it there is
 * @param lanes at most so many jobs are past their pictures and not done with it yet
 * @param jobs numbers of the jobs that need it
 * @param captured for each of them, the least seconds of it until its pictures are taken
 * @param whole for each of them, the least seconds of it in all
 * @param entry for each of them, what the changeovers can shrink by at most when it is left out
 * @param changeovers the least seconds of it for changeovers where every job is done
 */
record Bottleneck(
    OpenTime time,
    int lanes,
    int[] jobs,
    long[] captured,
    long[] whole,
    long[] entry,
    long changeovers) {
  /** Without changeovers. */
  static Bottleneck of(OpenTime time, int lanes, int[] jobs, long[] captured, long[] whole) {
    return new Bottleneck(time, lanes, jobs, captured, whole, new long[jobs.length], 0);
  }

  /** Seconds that all jobs take of it. */
  long needed() {
    return Arrays.stream(whole).sum() + changeovers;
  }

  /** Seconds that leaving a job out gives back, one number for each of the jobs. */
  long[] saved() {
    long[] saved = whole.clone();
    Arrays.setAll(saved, i -> saved[i] + entry[i]);
    return saved;
  }
}
