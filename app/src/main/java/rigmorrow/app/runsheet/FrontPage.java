package rigmorrow.app.runsheet;

import java.util.List;

/**
 * The first page.
 *
 * @param floor name of the floor
 * @param date first day in words
 * @param warning that the plan breaks rules and is not to be worked from; empty when it does not
 * @param breaches which rules it breaks
 * @param facts counts and times
 * @param late planned jobs after their promise, the latest first
 * @param leftOut jobs that are not done
 */
record FrontPage(
    String floor,
    String date,
    String warning,
    List<String> breaches,
    List<SheetDocument.Fact> facts,
    List<Late> late,
    List<Left> leftOut) {

  /** A planned job after its promise. */
  record Late(JobCard.Label job, String rig, String promise, String lateBy) {}

  /** A job that is not done, and why. */
  record Left(JobCard.Label job, String promise, String cause, List<String> sentences) {}
}
