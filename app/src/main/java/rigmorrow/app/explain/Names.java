package rigmorrow.app.explain;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rigmorrow.app.report.Durations;
import rigmorrow.app.report.Times;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;

/** What jobs, kit and times are called in sentences. */
final class Names {
  private final Batch batch;
  private final Times times;
  private final Map<String, String> jobs = new HashMap<>();

  Names(Batch batch) {
    this.batch = batch;
    this.times = Times.of(batch);
    for (ShotJob job : batch.shotList().jobs()) {
      jobs.put(job.id(), job.id() + " (" + job.name() + ")");
    }
  }

  Times times() {
    return times;
  }

  /** A job with its name. */
  String job(String id) {
    return jobs.getOrDefault(id, id);
  }

  /** What people call a kit. */
  String kit(String id) {
    return batch.floor().kit(id).map(Kit::label).orElse(id);
  }

  /** A rig with its id, or the name of a shelf. */
  String place(String place) {
    return batch.floor().placeName(place);
  }

  /** What people call some kit, by id. */
  String kits(List<String> ids) {
    return ids.stream().map(this::kit).collect(Collectors.joining(" and "));
  }

  /** How late, or that it is not. */
  static String late(int seconds) {
    return seconds == 0 ? "on time" : Durations.late(seconds) + " late";
  }

  /** Words with commas, and a word before the last. */
  static String listed(List<String> words, String before) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " " + before + " " + words.get(last);
  }
}
