package rigmorrow.app.runsheet;

import java.util.List;
import rigmorrow.app.runsheet.text.Fact;

/**
 * The first page.
 *
 * @param breaches which rules the plan breaks
 * @param facts counts and times
 * @param late planned jobs after their promise, the latest first
 * @param leftOut jobs that are not done
 */
record FrontPage(List<String> breaches, List<Fact> facts, List<Late> late, List<Left> leftOut) {

  /** A planned job after its promise. */
  record Late(JobCard.Label job, String rig, String promise, String lateBy) {}

  /** A job that is not done, and why. */
  record Left(JobCard.Label job, String promise, String cause, List<String> sentences) {}
}
