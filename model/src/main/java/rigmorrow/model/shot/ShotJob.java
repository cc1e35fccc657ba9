package rigmorrow.model.shot;

import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.check.Require;
import rigmorrow.model.setup.Setup;

/**
 * One product placed once on one rig to take the pictures of one recipe.
 *
 * @param id unique in the shot list
 * @param article article number as text; leading zeros count
 * @param gtin Global Trade Item Number with a right check digit; null when not given
 * @param name what the run sheet shows
 * @param sample the physical item; two jobs of one sample never overlap
 * @param recipe id of a recipe of the floor
 * @param item size, mass and nature
 * @param setup what this job asks for beyond its recipe
 * @param arrivesAt floor time from which the sample is there; null when it is there already
 * @param leavesAt floor time by which the sample must be off the rig; null when it stays
 * @param promise when the pictures are due; null when any time will do
 * @param weight how much the job counts when late or left out, 1 to 1000
 * @param note free text for the run sheet; null when none
 */
public record ShotJob(
    String id,
    String article,
    @Nullable String gtin,
    String name,
    String sample,
    String recipe,
    Item item,
    Setup setup,
    @Nullable LocalDateTime arrivesAt,
    @Nullable LocalDateTime leavesAt,
    @Nullable Promise promise,
    int weight,
    @Nullable String note) {
  public ShotJob {
    Require.text("job.id", id);
    Require.text("job.article", article);
    Require.text("job.name", name);
    Require.text("job.sample", sample);
    Require.text("job.recipe", recipe);
    Require.between("job.weight", weight, 1, 1000);
    Require.that(
        arrivesAt == null || leavesAt == null || leavesAt.isAfter(arrivesAt),
        "job.leavesAt",
        leavesAt == null ? "" : leavesAt,
        "a time after arrivesAt " + arrivesAt);
  }

  /** The same job with another sample. */
  public ShotJob withSample(String other) {
    return new ShotJob(
        id, article, gtin, name, other, recipe, item, setup, arrivesAt, leavesAt, promise, weight,
        note);
  }

  /** The same job, due at another time or at none. */
  public ShotJob withPromise(@Nullable Promise other) {
    return new ShotJob(
        id, article, gtin, name, sample, recipe, item, setup, arrivesAt, leavesAt, other, weight,
        note);
  }

  /** The same job, counting more or less. */
  public ShotJob withWeight(int other) {
    return new ShotJob(
        id, article, gtin, name, sample, recipe, item, setup, arrivesAt, leavesAt, promise, other,
        note);
  }

  /** True when being late with this job breaks the plan. */
  public boolean must() {
    return promise != null && promise.must();
  }
}
