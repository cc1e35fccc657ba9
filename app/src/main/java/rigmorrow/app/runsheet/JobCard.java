package rigmorrow.app.runsheet;

import java.util.List;
import rigmorrow.model.shot.ShotJob;

/**
 * Everything about one planned job that a run sheet may print. Empty text means that there is
 * nothing to print.
 *
 * @param label what it is called
 * @param state pinned, running or done
 * @param breaches which rules the plan breaks with it
 * @param measures size, mass and nature of the item
 * @param steps of the changeover, in order
 * @param setTo values that change and that no step names
 * @param kit what to fetch and from where
 * @param loading how to place, hang and power the item
 * @param unloading what taking it off needs besides
 * @param recipe what the recipe is called, how many pictures of each kind it takes, and what the
 *     job has otherwise than the recipe
 * @param pictures the pictures to take, and with what light and setup
 * @param counts what there must be before the item is taken off
 * @param promise when the pictures are due and how that stands
 * @param late true when they come after their promise
 * @param sampleTimes when the sample arrives and leaves
 * @param cautions what to mind with this job, besides what holds for every job
 * @param note of the shot list
 */
public record JobCard(
    Label label,
    String state,
    List<String> breaches,
    String measures,
    List<Step> steps,
    String setTo,
    List<String> kit,
    List<String> loading,
    List<String> unloading,
    String recipe,
    List<String> pictures,
    String counts,
    String promise,
    boolean late,
    List<String> sampleTimes,
    List<String> cautions,
    String note) {

  /**
   * What a job is called on every sheet.
   *
   * @param gtin empty when not given
   */
  public record Label(String id, String article, String gtin, String name, String sample) {

    /** The label of a job. */
    public static Label of(ShotJob job) {
      String gtin = job.gtin();
      return new Label(job.id(), job.article(), gtin == null ? "" : gtin, job.name(), job.sample());
    }
  }

  /**
   * One changeover step.
   *
   * @param people "2 people", or empty for one
   */
  public record Step(String text, String time, String people) {}
}
