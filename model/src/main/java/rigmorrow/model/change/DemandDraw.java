package rigmorrow.model.change;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.ShotJob;

/** Draws jobs of the day to leave out or to have once more. */
final class DemandDraw {
  private static final double PERCENT = 100;

  private final FloorDraft draft;
  private final SplittableRandom random;
  private final Set<String> pinned;
  private final Set<String> ids = new HashSet<>();
  private final Set<String> samples = new HashSet<>();

  /**
   * @param seed of the draw; each day draws differently
   */
  DemandDraw(FloorDraft draft, long seed) {
    this.draft = draft;
    this.random = new SplittableRandom(31 * seed + draft.listBefore().date().toEpochDay());
    this.pinned = draft.pins.stream().map(Pin::job).collect(Collectors.toSet());
    draft.jobs.forEach(
        job -> {
          ids.add(job.id());
          samples.add(job.sample());
        });
  }

  /** So many per cent more jobs, drawn sample by sample. */
  void jobs(double percent) {
    int wanted = (int) Math.round(draft.jobs.size() * (1 + percent / PERCENT));
    Map<String, List<ShotJob>> bySample =
        draft.jobs.stream()
            .collect(
                Collectors.groupingBy(ShotJob::sample, LinkedHashMap::new, Collectors.toList()));
    List<List<ShotJob>> drawn = shuffled(new ArrayList<>(bySample.values()));
    int more = wanted - draft.jobs.size();
    if (more > 0) {
      add(drawn, more);
    } else {
      leaveOut(drawn.stream().flatMap(List::stream).toList(), -more);
    }
  }

  /** So many times as many jobs of each recipe, drawn job by job. */
  void mix(Map<String, Double> factors) {
    List<String> known = draft.recipes.stream().map(Recipe::id).toList();
    factors.forEach(
        (recipe, factor) -> {
          if (!known.contains(recipe)) {
            draft.refuse("factors." + recipe, recipe, "recipes", known);
            return;
          }
          List<ShotJob> of =
              draft.jobs.stream().filter(job -> job.recipe().equals(recipe)).toList();
          int more = (int) Math.round(of.size() * factor) - of.size();
          List<ShotJob> drawn = shuffled(new ArrayList<>(of));
          if (more > 0) {
            add(drawn.stream().map(List::of).toList(), more);
          } else {
            leaveOut(drawn, -more);
          }
        });
  }

  private void add(List<List<ShotJob>> groups, int count) {
    if (groups.isEmpty()) {
      return;
    }
    List<ShotJob> added = new ArrayList<>();
    for (int turn = 0; added.size() < count; turn++) {
      String sample = fresh(groups.get(turn % groups.size()).get(0).sample(), samples);
      for (ShotJob job : groups.get(turn % groups.size())) {
        if (added.size() < count) {
          added.add(copy(job, fresh(job.id(), ids), sample));
        }
      }
    }
    List<ShotJob> all = new ArrayList<>(draft.jobs);
    all.addAll(added);
    draft.jobs = all;
  }

  private void leaveOut(List<ShotJob> drawn, int count) {
    Set<String> gone =
        drawn.stream()
            .map(ShotJob::id)
            .filter(id -> !pinned.contains(id))
            .limit(count)
            .collect(Collectors.toSet());
    draft.jobs =
        new ArrayList<>(draft.jobs.stream().filter(job -> !gone.contains(job.id())).toList());
  }

  private static String fresh(String name, Set<String> taken) {
    int number = 2;
    while (!taken.add(name + "+" + number)) {
      number++;
    }
    return name + "+" + number;
  }

  private static ShotJob copy(ShotJob job, String id, String sample) {
    return new ShotJob(
        id,
        job.article(),
        job.gtin(),
        job.name(),
        sample,
        job.recipe(),
        job.item(),
        job.setup(),
        job.arrivesAt(),
        job.leavesAt(),
        job.promise(),
        job.weight(),
        job.note());
  }

  /** Fisher and Yates, so that the same seed draws the same on any machine. */
  private <T> List<T> shuffled(List<T> items) {
    for (int last = items.size() - 1; last > 0; last--) {
      int other = random.nextInt(last + 1);
      T kept = items.get(last);
      items.set(last, items.get(other));
      items.set(other, kept);
    }
    return items;
  }
}
