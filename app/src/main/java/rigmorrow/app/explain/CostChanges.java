package rigmorrow.app.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rigmorrow.app.report.Counted;
import rigmorrow.app.report.Durations;
import rigmorrow.app.report.Times;
import rigmorrow.model.explain.Cost;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.shot.Batch;

/** Says what becomes better or worse from one plan to another, figure by figure. */
public final class CostChanges {
  private static final int MOST_NAMED = 5;

  private CostChanges() {}

  /**
   * Sentences with figures; the first says how the two stand, and the others what moves.
   *
   * @param times of the batch
   */
  public static List<String> of(Cost now, Cost then, Times times) {
    List<String> changes = new ArrayList<>();
    changes.add(CostSentences.standing(now, then));
    if (then.hard() != now.hard()) {
      changes.add(
          "rules that must hold are broken by "
              + then.hard()
              + " (mostly seconds) instead of "
              + now.hard());
    }
    if (then.leftOutJobs() != now.leftOutJobs()) {
      changes.add(
          Counted.of(then.leftOutJobs(), "job") + " left out instead of " + now.leftOutJobs());
    }
    changes.addAll(CostSentences.moved(now, then, 0, times));
    return changes.stream().map(CostChanges::sentence).toList();
  }

  /**
   * The same, with the jobs that are late in the second plan and were in time in the first.
   *
   * @param before the first plan
   * @param after the second
   * @param batch of the second
   */
  public static List<String> of(Cost now, Cost then, Plan before, Plan after, Batch batch) {
    List<String> changes = new ArrayList<>(of(now, then, Times.of(batch)));
    String standing = CostSentences.standing(now, then, before.figures(), after.figures());
    changes.set(0, sentence(standing));
    newlyLate(before, after, batch).ifPresent(changes::add);
    return changes;
  }

  private static Optional<String> newlyLate(Plan before, Plan after, Batch batch) {
    Map<String, String> names = new HashMap<>();
    batch.shotList().jobs().forEach(job -> names.put(job.id(), job.name()));
    List<PlannedJob> late =
        after.rigs().stream()
            .flatMap(rig -> rig.jobs().stream())
            .filter(job -> job.lateSeconds() > 0)
            .filter(job -> before.job(job.job()).filter(was -> was.lateSeconds() > 0).isEmpty())
            .sorted(Comparator.comparingInt(PlannedJob::lateSeconds).reversed())
            .toList();
    if (late.isEmpty()) {
      return Optional.empty();
    }
    String named =
        late.stream()
            .limit(MOST_NAMED)
            .map(
                job ->
                    "%s %s (%s)"
                        .formatted(
                            job.job(),
                            names.getOrDefault(job.job(), ""),
                            Durations.late(job.lateSeconds())))
            .collect(Collectors.joining(", "));
    int more = late.size() - MOST_NAMED;
    return Optional.of("Newly late: " + named + (more > 0 ? " and " + more + " more" : "") + ".");
  }

  private static String sentence(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
  }
}
