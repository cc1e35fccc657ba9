package rigmorrow.app.board.view;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Why a plan does with a job what it does, and what else could be done.
 *
 * @param revision of the plan that the answer is about
 */
public record WhyView(
    long revision, String job, String name, List<SectionView> sections, List<RigAnswerView> rigs) {

  /** Sentences under a heading. */
  public record SectionView(String heading, List<String> sentences) {}

  /**
   * What a rig would say to the job.
   *
   * @param kind as the explain door names it
   * @param place the cheapest there, 0 for the first; null when it cannot be there
   * @param standing BETTER, EQUAL or WORSE than the plan as it is; null when it cannot be there
   */
  public record RigAnswerView(
      String rig,
      String kind,
      @Nullable Integer place,
      @Nullable String standing,
      String sentence) {}
}
