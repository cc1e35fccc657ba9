package rigmorrow.solver.search;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Timeline;

/**
 * Which jobs go well next to each other: for each setup that is asked for, the others by what the
 * changeover to and fro takes. Jobs with the same setup are nearest of all.
 */
final class Neighbours {
  private static final int MOST_KEPT = 24;
  private static final int RIGS_ASKED = 3;

  /** Jobs by the setup they ask for. */
  private final int[][] jobsByRequest;

  /** For each setup the nearest ones, itself first. */
  private final int[][] nearest;

  private final CompiledBatch batch;

  Neighbours(CompiledBatch batch, Timeline timeline) {
    this.batch = batch;
    int requests = batch.requestCount();
    jobsByRequest = new int[requests][];
    int[] counts = new int[requests];
    for (int job = 0; job < batch.jobCount(); job++) {
      counts[batch.request(job)]++;
    }
    for (int request = 0; request < requests; request++) {
      jobsByRequest[request] = new int[counts[request]];
    }
    for (int job = batch.jobCount() - 1; job >= 0; job--) {
      jobsByRequest[batch.request(job)][--counts[batch.request(job)]] = job;
    }
    nearest = new int[requests][];
    for (int request = 0; request < requests; request++) {
      nearest[request] = nearest(request, timeline);
    }
  }

  /** A job that goes well beside this one, often one with the same setup. */
  int pick(int job, SplittableRandom random) {
    int[] near = nearest[batch.request(job)];
    // Halving odds: the same setup first, then the next nearest.
    int rank = 0;
    while (rank < near.length - 1 && random.nextInt(3) == 0) {
      rank++;
    }
    int[] jobs = jobsByRequest[near[rank]];
    return jobs[random.nextInt(jobs.length)];
  }

  private int[] nearest(int request, Timeline timeline) {
    int requests = jobsByRequest.length;
    long[] distance = new long[requests];
    for (int other = 0; other < requests; other++) {
      distance[other] = other == request ? -1 : distance(request, other, timeline);
    }
    Integer[] order = new Integer[requests];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, Comparator.comparingLong(other -> distance[other]));
    int kept = Math.min(MOST_KEPT, requests);
    int[] near = new int[kept];
    int found = 0;
    for (int i = 0; i < kept; i++) {
      if (distance[order[i]] < Long.MAX_VALUE) {
        near[found++] = order[i];
      }
    }
    return Arrays.copyOf(near, found);
  }

  /** Mean changeover to and fro on the first rigs that take jobs of both setups. */
  private long distance(int from, int to, Timeline timeline) {
    int a = jobsByRequest[from][0];
    int b = jobsByRequest[to][0];
    long sum = 0;
    int asked = 0;
    for (int rig = 0; rig < batch.rigCount() && asked < RIGS_ASKED; rig++) {
      if (batch.fits(a, rig) && batch.fits(b, rig)) {
        sum += timeline.setupSecondsBetween(rig, a, b) + timeline.setupSecondsBetween(rig, b, a);
        asked++;
      }
    }
    return asked == 0 ? Long.MAX_VALUE : sum / asked;
  }
}
