package rigmorrow.app.runsheet;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;
import rigmorrow.model.work.ChangeoverModel;

/** A plan of {@link SampleDay} made by hand; rig R3 and operator cyn have nothing to do. */
public final class SamplePlan {

  private final Batch batch;
  private final PlanClock clock;

  private SamplePlan(Batch batch) {
    this.batch = batch;
    this.clock = PlanClock.of(batch);
  }

  public static Plan of(Batch batch) {
    return new SamplePlan(batch).plan();
  }

  /** The same plan with one job more on rig R3, starting at a given second. */
  public static Plan withNightJob(Batch batch, int start) {
    SamplePlan sample = new SamplePlan(batch);
    Plan plan = sample.plan();
    List<RigPlan> rigs = new ArrayList<>(plan.rigs());
    rigs.set(2, new RigPlan("R3", List.of(sample.job("J8", start, List.of(), List.of(), 0))));
    return sample.plan(rigs, plan.leftOut().subList(0, 2), 6);
  }

  /** The same plan, but Ben does another job between loading and unloading the lamp. */
  static Plan withLampTakenOffLater(Batch batch) {
    SamplePlan sample = new SamplePlan(batch);
    Plan plan = sample.plan();
    List<RigPlan> rigs = new ArrayList<>(plan.rigs());
    int start = sample.at(10, 4);
    rigs.set(2, new RigPlan("R3", List.of(sample.job("J8", start, List.of(), List.of(), 0))));
    return sample.plan(rigs, plan.leftOut().subList(0, 2), 6);
  }

  private Plan plan() {
    Rig table = batch.floor().rigs().get(0);
    ChangeoverModel changeovers = new ChangeoverModel(batch.floor());
    List<ChangeoverStep> toGrey =
        changeovers.steps(table, table.initialSetup(), new Setup(Map.of("background", "grey")));
    Rig platform = batch.floor().rigs().get(1);
    ChangeoverStep fetch =
        changeovers.kitMove(batch.floor().kits().get(0), "RH-1", "Shelf A", platform);
    List<RigPlan> rigs =
        List.of(
            new RigPlan(
                "R1",
                List.of(
                    job("J1", at(7, 0), List.of(), List.of(), 0),
                    job("J2", at(9, 10), toGrey, List.of(), 270))),
            new RigPlan(
                "R2",
                List.of(
                    job(
                        "J3",
                        at(8, 0),
                        List.of(fetch),
                        List.of(new KitUse("rotator-head", "RH-1", "Shelf A")),
                        0),
                    job("J4", at(10, 0), List.of(), List.of(), 0),
                    job("J5", at(11, 0), List.of(), List.of(), 0))),
            new RigPlan("R3", List.of()));
    List<LeftOut> leftOut =
        List.of(
            new LeftOut(
                "J6",
                LeftOut.Cause.NEEDS_MEASURING,
                List.of("Width is not known.", "Mass is not known.")),
            new LeftOut(
                "J7",
                LeftOut.Cause.NO_RIG,
                List.of("Table one: height 2000 mm needed, 900 mm offered.")),
            new LeftOut("J8", LeftOut.Cause.NO_ROOM, List.of("No room before 16:00.")));
    return plan(rigs, leftOut, 5);
  }

  private Plan plan(List<RigPlan> rigs, List<LeftOut> leftOut, int planned) {
    int end =
        rigs.stream()
            .flatMap(rig -> rig.jobs().stream())
            .mapToInt(job -> job.whole().end())
            .max()
            .orElse(0);
    return new Plan(
        batch.floor().name(),
        batch.floor().zone(),
        batch.shotList().date(),
        batch.shotList().days(),
        rigs,
        leftOut,
        new PlanFigures(0, leftOut.size(), 200, 10, 20, planned, leftOut.size(), 1, 270, 450, end),
        new PlanOrigin("dispatch", 1, 1, 0, "steps"));
  }

  private int at(int hour, int minute) {
    return clock.secondsAt(clock.date().atTime(LocalTime.of(hour, minute)));
  }

  /** Changeover as long as its steps, then 2 min to load, 10 min to capture, 1 min to unload. */
  private PlannedJob job(
      String id, int start, List<ChangeoverStep> steps, List<KitUse> kit, int lateSeconds) {
    boolean two = !steps.isEmpty() || id.equals("J5");
    List<String> people = two ? List.of("ada", "ben") : List.of(id.equals("J1") ? "ada" : "ben");
    int changeoverEnd = start + steps.stream().mapToInt(ChangeoverStep::attendedSeconds).sum();
    int tail = steps.stream().mapToInt(ChangeoverStep::unattendedSeconds).max().orElse(0);
    int loaded = changeoverEnd + 120;
    int captureStart = Math.max(loaded, changeoverEnd + tail);
    int captured = captureStart + 600;
    boolean attended = id.equals("J2");
    return new PlannedJob(
        id,
        steps,
        steps.isEmpty() ? null : new Attended(new Span(start, changeoverEnd), people),
        changeoverEnd + tail,
        new Attended(new Span(changeoverEnd, loaded), people),
        new Span(captureStart, captured),
        attended ? List.of("ada") : List.of(),
        new Attended(new Span(captured, captured + 60), people),
        kit,
        lateSeconds);
  }
}
