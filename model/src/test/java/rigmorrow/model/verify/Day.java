package rigmorrow.model.verify;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import rigmorrow.model.FloorBuilder;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.ItemBuilder;
import rigmorrow.model.JobBuilder;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Hanging;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.model.time.PlanClock;

/**
 * A day's batch and plan to break on purpose. Without a change it is the hand-made plan that keeps
 * every rule: a book and a hung bag on the table, an attended lamp and a vase for two on the
 * platform, a piece without measurements left out.
 */
final class Day {
  /** Worked out by hand: see the comments at the jobs. */
  static final PlanFigures FIGURES =
      new PlanFigures(0, 3, 10, 73, 105, 4, 1, 1, 30, 1090, clock("08:45:00"));

  private final FloorBuilder floor = FloorFixtures.floor();
  private final Map<String, JobBuilder> jobs = new LinkedHashMap<>();
  private final List<Pin> pins = new ArrayList<>();
  private final List<String> heldBack = new ArrayList<>();
  private final Map<String, List<PlannedJob>> rigs = new LinkedHashMap<>();
  private final List<LeftOut> leftOut = new ArrayList<>();
  private UnaryOperator<PlanFigures> figures = stated -> stated;

  Day() {
    job("book").weight(2).shouldBy(at("08:12"));
    job("bag")
        .item(new ItemBuilder().massKg(2.0).hanging(new Hanging(2, 900, false)))
        .arrivesAt(at("08:10"))
        .leavesAt(at("10:00"));
    job("lamp").recipe("stills").mustBy(at("09:00"));
    job("vase").item(new ItemBuilder().handsNeeded(2)).setup(Map.of("surface", "clear"));
    job("piece").item(new ItemBuilder().massKg(null)).weight(3);
    pins.add(new Pin("lamp", "platform", 0, at("07:30"), PinState.PLANNED));
    rigs.put("table", new ArrayList<>(List.of(book(), bag())));
    rigs.put("platform", new ArrayList<>(List.of(lamp(), vase())));
    leftOut.add(new LeftOut("piece", LeftOut.Cause.NEEDS_MEASURING, List.of("no massKg")));
  }

  /** Already white, the ring turns for the 50th time: nothing to change. 30 s late. */
  private static PlannedJob book() {
    return new PlannedJobBuilder("book")
        .changeover(null, clock("08:00:00"))
        .load(clock("08:00:00"), clock("08:02:30"), "bo")
        .capture(clock("08:02:30"), clock("08:12:30"))
        .unload(clock("08:12:30"), clock("08:14:00"), "bo")
        .late(30)
        .build();
  }

  /** The head from the shelf, 60 + 90 s, and ring service 300 s; neither takes the rig's factor. */
  private static PlannedJob bag() {
    return new PlannedJobBuilder("bag")
        .step(150, 0, 1, "hang")
        .step(300, 0, 1, "service")
        .changeover(
            PlannedJobBuilder.at(clock("08:14:00"), clock("08:21:30"), "ann"), clock("08:21:30"))
        .load(clock("08:21:30"), clock("08:27:00"), "ann")
        .capture(clock("08:27:00"), clock("08:37:00"))
        .unload(clock("08:37:00"), clock("08:39:30"), "ann")
        .kit(new KitUse("head", "head-1", "shelf"))
        .build();
  }

  /** Two share 300 s and 120 s; the light warms up until 120 + 600 s. The loader stays. */
  private static PlannedJob lamp() {
    return new PlannedJobBuilder("lamp")
        .step(300, 0, 1)
        .step(120, 600, 1, "light")
        .changeover(
            PlannedJobBuilder.at(clock("07:30:00"), clock("07:35:00"), "ann", "bo"),
            clock("07:42:00"))
        .load(clock("07:35:00"), clock("07:37:30"), "bo")
        .capture(clock("07:42:00"), clock("07:47:00"), "bo")
        .unload(clock("07:47:00"), clock("07:48:30"), "bo")
        .build();
  }

  /** Back to white 240 s, then both lay the clear surface, 100 s. Two people to place it. */
  private static PlannedJob vase() {
    return new PlannedJobBuilder("vase")
        .step(240, 0, 1)
        .step(100, 0, 2)
        .changeover(
            PlannedJobBuilder.at(clock("08:27:00"), clock("08:32:40"), "ann", "bo"),
            clock("08:32:40"))
        .load(clock("08:32:40"), clock("08:35:10"), "ann", "bo")
        .capture(clock("08:35:10"), clock("08:43:30"))
        .unload(clock("08:43:30"), clock("08:45:00"), "ann", "bo")
        .build();
  }

  static int clock(String time) {
    return LocalTime.parse(time).toSecondOfDay();
  }

  static LocalDateTime at(String time) {
    return FloorFixtures.MONDAY.atTime(LocalTime.parse(time));
  }

  FloorBuilder floor() {
    return floor;
  }

  /** The job to change, a new one when there is none of this id. */
  JobBuilder job(String id) {
    return jobs.computeIfAbsent(id, JobBuilder::new);
  }

  List<Pin> pins() {
    return pins;
  }

  List<String> heldBack() {
    return heldBack;
  }

  List<LeftOut> leftOut() {
    return leftOut;
  }

  List<PlannedJob> planned(String rig) {
    return rigs.computeIfAbsent(rig, key -> new ArrayList<>());
  }

  /** Takes a job out of the shot list and the plan. */
  void drop(String id) {
    jobs.remove(id);
    pins.removeIf(pin -> pin.job().equals(id));
    rigs.values().forEach(list -> list.removeIf(planned -> planned.job().equals(id)));
    leftOut.removeIf(left -> left.job().equals(id));
  }

  /** Changes one planned job. */
  Day plan(String id, UnaryOperator<PlannedJobBuilder> change) {
    rigs.values()
        .forEach(
            list ->
                list.replaceAll(
                    planned ->
                        planned.job().equals(id)
                            ? change.apply(PlannedJobBuilder.from(planned)).build()
                            : planned));
    return this;
  }

  /** States other figures than those of the times. */
  Day figures(UnaryOperator<PlanFigures> change) {
    figures = change;
    return this;
  }

  Batch batch() {
    Floor built = floor.build();
    List<ShotJob> list = jobs.values().stream().map(JobBuilder::build).toList();
    return new Batch(built, new ShotList(FloorFixtures.MONDAY, 1, list, pins, heldBack));
  }

  Plan plan(PlanFigures stated) {
    Batch batch = batch();
    List<RigPlan> list = new ArrayList<>();
    rigs.forEach((rig, planned) -> list.add(new RigPlan(rig, planned)));
    return new Plan(
        batch.floor().name(),
        batch.floor().zone(),
        FloorFixtures.MONDAY,
        1,
        list,
        leftOut,
        stated,
        new PlanOrigin("dispatch", 1, 1, 0, "steps"));
  }

  /** What the checker says when the stated figures are those of the changed times. */
  List<Breach> breaches(long hard) {
    Batch batch = batch();
    Plan plan = plan(FIGURES);
    PlanFigures own =
        new FigureChecker(batch, new BreachLog(PlanClock.of(batch)))
            .figures(plan, PlannedRun.of(batch, plan));
    PlanFigures withHard =
        new PlanFigures(
            hard,
            own.leftOutPoints(),
            own.latenessPoints(),
            own.changeoverPoints(),
            own.finishingPoints(),
            own.planned(),
            own.leftOut(),
            own.lateJobs(),
            own.lateSeconds(),
            own.changeoverSeconds(),
            own.finishedAt());
    return PlanChecker.check(batch, plan(figures.apply(withHard)));
  }
}
