package rigmorrow.app.runsheet;

import java.util.List;
import rigmorrow.app.runsheet.chart.DayChart;
import rigmorrow.app.runsheet.text.Fact;

/**
 * One rig's day.
 *
 * @param anchor id of the sheet within the document
 * @param jobs how many jobs are planned
 * @param setup the state it is in at the start
 * @param cautions what to mind with every job
 * @param recipes the recipes of the jobs with their pictures
 * @param chart the day drawn
 * @param lines jobs and remarks in order of time
 */
record RigSheet(
    String anchor,
    String id,
    String name,
    int jobs,
    List<Fact> facts,
    List<Fact> setup,
    List<String> cautions,
    List<JobCards.Pictures> recipes,
    DayChart chart,
    List<DayLines.Line<Job>> lines) {

  /**
   * A job with its times.
   *
   * @param number its place in the sequence, from 1
   */
  record Job(int number, JobCard card, List<Part> parts) {}

  /**
   * A part of a job, or a wait between two.
   *
   * @param who names; empty where nobody is needed
   * @param people "2 people", or empty for fewer
   */
  record Part(String what, String when, String who, String people) {}
}
