package rigmorrow.model;

import java.time.LocalDateTime;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;

/**
 * Builds shot jobs for tests; each call replaces one part. To begin with: a box, recipe "spin", a
 * sample of its own, weight 1.
 */
public final class JobBuilder {
  private final String id;
  private String sample;
  private String recipe = "spin";
  private Item item = new ItemBuilder().build();
  private Setup setup = Setup.ANY;
  private @Nullable LocalDateTime arrivesAt;
  private @Nullable LocalDateTime leavesAt;
  private @Nullable Promise promise;
  private int weight = 1;

  public JobBuilder(String id) {
    this.id = id;
    this.sample = "sample of " + id;
  }

  public JobBuilder sample(String other) {
    sample = other;
    return this;
  }

  public JobBuilder recipe(String other) {
    recipe = other;
    return this;
  }

  public JobBuilder item(ItemBuilder other) {
    item = other.build();
    return this;
  }

  public JobBuilder setup(Map<String, String> values) {
    setup = new Setup(values);
    return this;
  }

  public JobBuilder arrivesAt(LocalDateTime time) {
    arrivesAt = time;
    return this;
  }

  public JobBuilder leavesAt(LocalDateTime time) {
    leavesAt = time;
    return this;
  }

  public JobBuilder mustBy(LocalDateTime time) {
    promise = new Promise(time, true);
    return this;
  }

  public JobBuilder shouldBy(LocalDateTime time) {
    promise = new Promise(time, false);
    return this;
  }

  public JobBuilder weight(int other) {
    weight = other;
    return this;
  }

  public ShotJob build() {
    return new ShotJob(
        id, "A-" + id, null, id, sample, recipe, item, setup, arrivesAt, leavesAt, promise, weight,
        null);
  }
}
