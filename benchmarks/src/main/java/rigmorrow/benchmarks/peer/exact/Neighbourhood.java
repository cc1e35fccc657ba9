package rigmorrow.benchmarks.peer.exact;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.solver.timeline.BatchFacts;

/**
 * Some jobs are free: each may go anywhere on any rig within a stretch of time about where it is,
 * with full arcs among themselves. All others keep their rig and their order, and what ends before
 * the stretch begins keeps its times.
 */
final class Neighbourhood implements Freedom {
  private static final int HOUR = 3600;

  private final KnownPlan plan;
  private final Set<Integer> free;
  private final int from;
  private final int to;

  /** The next job on the same rig that is not free, by rig and job + 1. */
  private final int[][] nextKept;

  /** The last job before it on its rig that is not free, by job; the last of all by rig. */
  private final int[] keptBefore;

  private final int[] lastKept;

  private Neighbourhood(BatchFacts facts, KnownPlan plan, Set<Integer> free, int from, int to) {
    this.plan = plan;
    this.free = free;
    this.from = from;
    this.to = to;
    this.nextKept = new int[plan.byRig.size()][facts.batch().jobCount() + 1];
    this.keptBefore = new int[facts.batch().jobCount()];
    this.lastKept = new int[plan.byRig.size()];
    for (int rig = 0; rig < nextKept.length; rig++) {
      int last = SetupCosts.INITIAL;
      for (int job : plan.byRig.get(rig)) {
        if (!free.contains(job)) {
          nextKept[rig][last + 1] = job;
          keptBefore[job] = last;
          last = job;
        }
      }
      nextKept[rig][last + 1] = KnownPlan.NONE;
      lastKept[rig] = last;
    }
  }

  /** Frees so many jobs: those in a stretch of time, or any that are like a chosen one. */
  static Neighbourhood draw(BatchFacts facts, KnownPlan plan, int size, Random random) {
    int jobs = facts.batch().jobCount();
    List<Integer> order = new ArrayList<>();
    for (int job = 0; job < jobs; job++) {
      order.add(job);
    }
    Collections.shuffle(order, random);
    int seed = seed(plan, order, random);
    int kind = random.nextInt(3);
    double[] far = new double[jobs];
    for (int job = 0; job < jobs; job++) {
      double apart = Math.abs(start(plan, job) - start(plan, seed)) / (double) HOUR;
      boolean like = facts.batch().request(job) == facts.batch().request(seed);
      double late = late(plan, job) > 0 ? -1 : 0;
      far[job] =
          switch (kind) {
            case 0 -> apart;
            case 1 -> apart / 4 + (like ? -2 : 0) + 2 * random.nextDouble();
            default -> late + 2 * random.nextDouble();
          };
    }
    order.sort(Comparator.comparingDouble(job -> far[job]));
    Set<Integer> free = new HashSet<>(order.subList(0, Math.min(size, jobs)));
    free.add(seed);
    int first = free.stream().mapToInt(job -> start(plan, job)).min().orElse(0);
    int last = free.stream().mapToInt(job -> start(plan, job)).max().orElse(0);
    return new Neighbourhood(facts, plan, free, first - HOUR / 2, last + HOUR / 2);
  }

  /** Mostly one that is late. */
  private static int seed(KnownPlan plan, List<Integer> order, Random random) {
    int any = order.get(0);
    return random.nextInt(3) == 0
        ? any
        : order.stream().filter(job -> late(plan, job) > 0).findFirst().orElse(any);
  }

  private static int late(KnownPlan plan, int job) {
    PlannedJob planned = plan.of(job);
    return planned == null ? 1 : planned.lateSeconds();
  }

  /** What is left out could be anywhere, so it counts as being in the middle of the day. */
  private static int start(KnownPlan plan, int job) {
    PlannedJob planned = plan.of(job);
    return planned == null ? 12 * HOUR : planned.whole().start();
  }

  @Override
  public boolean on(int job, int rig) {
    return free.contains(job) || plan.rig[job] == rig;
  }

  @Override
  public boolean out(int job) {
    return free.contains(job) || plan.rig[job] == KnownPlan.NONE;
  }

  @Override
  public boolean after(int rig, int before, int job) {
    boolean stays = !free.contains(before);
    boolean nextStays = !free.contains(job);
    if (stays && nextStays) {
      return nextKept[rig][before + 1] == job;
    }
    if (stays) {
      return near(before, nextKept[rig][before + 1]);
    }
    if (nextStays) {
      return near(job == KnownPlan.NONE ? lastKept[rig] : keptBefore[job], job);
    }
    return true;
  }

  /** True when the place between two jobs that stay is in the stretch. */
  private boolean near(int before, int next) {
    boolean tooEarly = next != KnownPlan.NONE && end(next) < from;
    boolean tooLate = before != SetupCosts.INITIAL && start(plan, before) > to;
    return !tooEarly && !tooLate;
  }

  private int end(int job) {
    return Objects.requireNonNull(plan.of(job)).whole().end();
  }

  @Override
  public boolean settled(int job) {
    return !free.contains(job) && plan.rig[job] != KnownPlan.NONE && end(job) < from;
  }
}
