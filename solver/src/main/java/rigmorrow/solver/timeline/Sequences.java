package rigmorrow.solver.timeline;

import java.util.ArrayList;
import java.util.List;

/**
 * The decisions of a plan with what they come to: which jobs each rig does in which order, and what
 * is left out. The score has three levels; less is better on each, the first counts first.
 *
 * @param byRig job numbers of each rig in order
 * @param backlog job numbers that are left out
 * @param hard what breaks hard rules
 * @param medium weights of what is left out
 * @param soft weighted seconds: points times 60
 */
public record Sequences(
    List<List<Integer>> byRig, List<Integer> backlog, long hard, long medium, long soft) {
  public Sequences {
    byRig = byRig.stream().map(List::copyOf).toList();
    backlog = List.copyOf(backlog);
  }

  /** Reads the sequences and the score of a timeline that was just decoded. */
  public static Sequences of(CompiledBatch batch, Timeline timeline) {
    List<List<Integer>> byRig = new ArrayList<>();
    boolean[] planned = new boolean[batch.jobCount()];
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      List<Integer> jobs = new ArrayList<>();
      for (int at = 0; at < timeline.length(rig); at++) {
        jobs.add(timeline.sequence(rig)[at]);
        planned[timeline.sequence(rig)[at]] = true;
      }
      byRig.add(jobs);
    }
    List<Integer> backlog = new ArrayList<>();
    long medium = 0;
    for (int job = 0; job < planned.length; job++) {
      if (!planned[job]) {
        backlog.add(job);
        medium += batch.leftOutWeight(job);
      }
    }
    long hard = timeline.hard() + batch.pinnedAmong(backlog);
    return new Sequences(byRig, backlog, hard, medium, batch.softSeconds(timeline));
  }

  /** Writes the sequences into a timeline and decodes it. */
  public void decode(Timeline timeline) {
    for (int rig = 0; rig < byRig.size(); rig++) {
      List<Integer> jobs = byRig.get(rig);
      int[] sequence = timeline.sequence(rig);
      for (int at = 0; at < jobs.size(); at++) {
        sequence[at] = jobs.get(at);
      }
      timeline.setLength(rig, jobs.size());
    }
    timeline.decode();
  }

  /** True when these are strictly better. */
  public boolean betterThan(Sequences other) {
    if (hard != other.hard) {
      return hard < other.hard;
    }
    return medium != other.medium ? medium < other.medium : soft < other.soft;
  }
}
