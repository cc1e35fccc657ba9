package rigmorrow.app.runsheet;

import java.util.List;

/**
 * One operator's day.
 *
 * @param anchor id of the sheet within the document
 * @param tasks how many tasks are planned
 * @param lines tasks and remarks in order of time
 */
record OperatorSheet(
    String anchor,
    String id,
    String name,
    int tasks,
    List<SheetDocument.Fact> facts,
    List<DayLines.Line<Task>> lines) {

  /**
   * Something one operator does.
   *
   * @param number its place in the day, from 1
   * @param part changeover, load, capture or unload
   * @param breaches which rules the plan breaks with the job
   * @param people "2 people", or empty for one
   * @param with who else and who is in charge; empty when alone
   * @param steps of a changeover
   * @param how what to do besides
   * @param cautions what to mind; empty where {@code sameCautionsAs} says it
   * @param sameCautionsAs "Cautions as at task 3" where the task before is of the same job; else
   *     empty
   */
  record Task(
      int number,
      String when,
      String duration,
      String rig,
      String part,
      JobCard.Label job,
      List<String> breaches,
      String people,
      String with,
      List<JobCard.Step> steps,
      List<String> how,
      List<String> cautions,
      String sameCautionsAs) {}
}
