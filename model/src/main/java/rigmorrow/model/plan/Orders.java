package rigmorrow.model.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;

/**
 * Which jobs each rig does in which order, by id.
 *
 * @param byRig job ids of each rig, in floor order
 */
public record Orders(List<List<String>> byRig) {
  private static final int MOST_NAMED = 5;

  public Orders {
    byRig = byRig.stream().map(List::copyOf).toList();
  }

  /**
   * Reads the orders of a plan.
   *
   * @throws IllegalArgumentException when the plan is of another floor, shot list or day
   */
  public static Orders of(Batch batch, Plan plan) {
    plan.requireDaysOf(batch);
    List<String> rigs = batch.floor().rigs().stream().map(Rig::id).toList();
    List<String> unknownRigs =
        plan.rigs().stream().map(RigPlan::rig).filter(rig -> !rigs.contains(rig)).toList();
    refuse(unknownRigs, "plan has rigs that the floor has not");
    Set<String> known =
        batch.shotList().jobs().stream().map(ShotJob::id).collect(Collectors.toSet());
    List<String> named = new ArrayList<>();
    plan.rigs().forEach(rig -> rig.jobs().forEach(job -> named.add(job.job())));
    plan.leftOut().stream().map(LeftOut::job).forEach(named::add);
    refuse(
        named.stream().filter(job -> !known.contains(job)).toList(),
        "plan has jobs that the shot list has not");
    Set<String> seen = new HashSet<>();
    refuse(named.stream().filter(job -> !seen.add(job)).toList(), "plan has jobs twice");
    refuse(
        batch.shotList().jobs().stream().map(ShotJob::id).filter(id -> !seen.contains(id)).toList(),
        "plan neither does nor leaves out jobs of the shot list");
    List<List<String>> byRig = new ArrayList<>();
    for (String rig : rigs) {
      byRig.add(
          plan.rigs().stream()
              .filter(one -> one.rig().equals(rig))
              .flatMap(one -> one.jobs().stream())
              .map(PlannedJob::job)
              .toList());
    }
    return new Orders(byRig);
  }

  private static void refuse(List<String> wrong, String what) {
    if (!wrong.isEmpty()) {
      String more =
          wrong.size() > MOST_NAMED ? " and " + (wrong.size() - MOST_NAMED) + " more" : "";
      String names = wrong.stream().limit(MOST_NAMED).collect(Collectors.joining(", "));
      throw new IllegalArgumentException(what + ": " + names + more);
    }
  }

  /** Number of the rig that does a job, or -1. */
  public int rigOf(String job) {
    for (int rig = 0; rig < byRig.size(); rig++) {
      if (byRig.get(rig).contains(job)) {
        return rig;
      }
    }
    return -1;
  }

  /** Number of jobs on a rig. */
  public int length(int rig) {
    return byRig.get(rig).size();
  }

  /** The first place of a rig behind every job that is running or done. */
  public int firstFree(int rig, Set<String> fixed) {
    List<String> jobs = byRig.get(rig);
    int place = jobs.size();
    while (place > 0 && !fixed.contains(jobs.get(place - 1))) {
      place--;
    }
    return place;
  }

  /** The same orders without a job. */
  public Orders without(String job) {
    return new Orders(
        byRig.stream()
            .map(jobs -> jobs.stream().filter(one -> !one.equals(job)).toList())
            .toList());
  }

  /** The same orders with a job, which is in none, put at a place of a rig. */
  public Orders with(int rig, int place, String job) {
    List<List<String>> changed = new ArrayList<>(byRig);
    List<String> jobs = new ArrayList<>(byRig.get(rig));
    jobs.add(place, job);
    changed.set(rig, jobs);
    return new Orders(changed);
  }

  /** The same orders with a job, which is in none, in the place of another. */
  public Orders insteadOf(String out, String job) {
    return new Orders(
        byRig.stream()
            .map(jobs -> jobs.stream().map(one -> one.equals(out) ? job : one).toList())
            .toList());
  }
}
