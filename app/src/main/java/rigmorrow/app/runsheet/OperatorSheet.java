package rigmorrow.app.runsheet;

import java.util.List;
import rigmorrow.app.runsheet.chart.DayChart;
import rigmorrow.app.runsheet.text.Fact;

/**
 * One operator's day.
 *
 * @param anchor id of the sheet within the document
 * @param tasks how many tasks are planned
 * @param cautions what to mind with every job
 * @param chart the day drawn
 * @param lines tasks and remarks in order of time
 */
record OperatorSheet(
    String anchor,
    String id,
    String name,
    int tasks,
    List<Fact> facts,
    List<String> cautions,
    DayChart chart,
    List<DayLines.Line<Task>> lines) {

  /**
   * What one operator does with one job without going elsewhere in between.
   *
   * @param number its place in the day, from 1
   * @param rig where
   * @param breaches which rules the plan breaks with the job
   * @param parts in order
   * @param cautions what to mind with this job
   * @param notes when its sample comes and goes, and the note of the shot list
   */
  record Task(
      int number,
      String rig,
      JobCard.Label job,
      List<String> breaches,
      List<Part> parts,
      List<String> cautions,
      List<String> notes) {}

  /**
   * One attended part of a job.
   *
   * @param what changeover, load, capture or unload
   * @param people "2 people", or empty for one
   * @param with who else and who is in charge; empty when alone
   * @param steps of a changeover
   * @param how what to do besides
   */
  record Part(
      String what,
      String when,
      String people,
      String with,
      List<JobCard.Step> steps,
      List<String> how) {}
}
