package rigmorrow.app.labels;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/**
 * A physical item that gets a label.
 *
 * @param gtin null when not given
 * @param jobs ids of the jobs that it is for, at least one
 */
record Sample(String id, String article, @Nullable String gtin, String name, List<String> jobs) {
  Sample {
    jobs = List.copyOf(jobs);
  }

  private record Key(String sample, String article, @Nullable String gtin) {}

  /** Every sample of a shot list once, in the order of the list. */
  static List<Sample> of(ShotList list) {
    Map<Key, List<ShotJob>> jobs = new LinkedHashMap<>();
    for (ShotJob job : list.jobs()) {
      Key key = new Key(job.sample(), job.article(), job.gtin());
      jobs.computeIfAbsent(key, unused -> new ArrayList<>()).add(job);
    }
    List<Sample> samples = new ArrayList<>();
    jobs.forEach(
        (key, group) ->
            samples.add(
                new Sample(
                    key.sample,
                    key.article,
                    key.gtin,
                    group.get(0).name(),
                    group.stream().map(ShotJob::id).toList())));
    return samples;
  }
}
