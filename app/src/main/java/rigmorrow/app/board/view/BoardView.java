package rigmorrow.app.board.view;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything the board shows of one plan. Times are seconds from the plan's origin, the first
 * instant of its first day in the floor's zone.
 *
 * @param revision grows by one with everything that is kept, undone or done again
 * @param change grows with everything that this view or the list of versions would say otherwise:
 *     the plan, what no plan can be below, a version put by or published. A search's progress does
 *     not count. Begins anew when the program does
 * @param floor name of the floor
 * @param zone time zone of the floor, as in the IANA database
 * @param date first planned day, YYYY-MM-DD
 * @param days how many days
 * @param originMillis the plan's origin in milliseconds since 1970-01-01T00:00Z
 * @param horizonSeconds end of the last day
 * @param rigs in floor order
 * @param operators in floor order
 * @param kits in floor order
 * @param samples those that more than one job needs
 * @param jobs in shot list order
 * @param figures what the plan comes to
 * @param crewLoad how many people are busy over the day
 * @param breaches hard rules the plan breaks; empty for a workable plan
 * @param stamp which plan it is, as its papers say
 * @param undo what would be undone; null when there is nothing
 * @param redo what would be done again; null when there is nothing
 * @param searching true while a search runs, and the board takes no touch
 * @param advice what a plan is and is not
 */
public record BoardView(
    long revision,
    long change,
    String floor,
    String zone,
    String date,
    int days,
    long originMillis,
    int horizonSeconds,
    List<RigView> rigs,
    List<OperatorView> operators,
    List<KitView> kits,
    List<SampleView> samples,
    List<JobView> jobs,
    FiguresView figures,
    List<LoadView> crewLoad,
    List<BreachView> breaches,
    String stamp,
    @Nullable String undo,
    @Nullable String redo,
    boolean searching,
    String advice) {

  /** From a second to a second, the end exclusive. */
  public record SpanView(int start, int end) {}

  /**
   * A rig and its use, by the definitions of ISO 22400-2.
   *
   * @param open hours
   * @param jobs ids in the order they run
   * @param plannedBusySeconds open hours within the plan
   * @param unitBusySeconds from each job's first step to its unloading
   * @param setupSeconds of changeovers with their warm-up
   * @param productionSeconds of capture
   * @param allocationPercent unit busy time of planned busy time, one decimal
   * @param utilisationPercent production time of unit busy time, one decimal
   */
  public record RigView(
      String id,
      String name,
      List<SpanView> open,
      List<String> jobs,
      long plannedBusySeconds,
      long unitBusySeconds,
      long setupSeconds,
      long productionSeconds,
      double allocationPercent,
      double utilisationPercent) {}

  /**
   * An operator.
   *
   * @param shifts without their breaks
   * @param breaks within the shifts
   * @param handsOnSeconds sum of the tasks
   * @param shiftSeconds sum of the shifts
   */
  public record OperatorView(
      String id,
      String name,
      List<String> skills,
      List<SpanView> shifts,
      List<SpanView> breaks,
      List<TaskView> tasks,
      long handsOnSeconds,
      long shiftSeconds) {}

  /**
   * What an operator does.
   *
   * @param part CHANGEOVER, LOAD, CAPTURE or UNLOAD
   */
  public record TaskView(String job, String rig, String part, int start, int end) {}

  /** A kind of kit with its pieces. */
  public record KitView(String id, String name, List<UnitView> units) {}

  /** A piece of kit and where it is taken. */
  public record UnitView(String id, List<UseView> uses) {}

  /** A sample that several jobs need. */
  public record SampleView(String id, List<UseView> uses) {}

  /**
   * Something is taken by a job.
   *
   * @param from where it is fetched, a rig's name or a shelf; empty for a sample
   */
  public record UseView(String job, String rig, int start, int end, String from) {}

  /**
   * How busy the crew is in a stretch of time.
   *
   * @param busy people at work, averaged, one decimal
   * @param there people on shift and not on a break, averaged, one decimal
   */
  public record LoadView(int start, int end, double busy, double there) {}

  /** A hard rule that is broken: by what, by how much, in a sentence. */
  public record BreachView(String rule, String where, long amount, String sentence) {}
}
