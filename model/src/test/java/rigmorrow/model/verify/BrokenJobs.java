package rigmorrow.model.verify;

import static rigmorrow.model.verify.Day.clock;
import static rigmorrow.model.verify.PlannedJobBuilder.at;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.ItemBuilder;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.plan.LeftOut;

/** Plans whose jobs are missing, misplaced or timed wrongly. */
final class BrokenJobs {
  private final List<Broken> all = new ArrayList<>();

  private BrokenJobs() {}

  static List<Broken> all() {
    BrokenJobs broken = new BrokenJobs();
    broken.coverage();
    broken.fit();
    broken.order();
    broken.handsOnTimes();
    broken.changeoverTimes();
    broken.wrongSteps();
    broken.missingOrNeedlessSteps();
    broken.ring();
    return broken.all;
  }

  private void add(String name, FloorRule rule, String where, long amount, Consumer<Day> change) {
    all.add(new Broken(name, rule, where, amount, change));
  }

  private void coverage() {
    add("job forgotten", FloorRule.JOB_PLANNED_ONCE, "piece", 1, day -> day.leftOut().clear());
    add(
        "job planned and left out",
        FloorRule.JOB_PLANNED_ONCE,
        "vase",
        1,
        day -> day.leftOut().add(new LeftOut("vase", LeftOut.Cause.NO_ROOM, List.of("full"))));
    add(
        "unknown job",
        FloorRule.JOB_PLANNED_ONCE,
        "ghost",
        1,
        day -> day.leftOut().add(new LeftOut("ghost", LeftOut.Cause.NO_ROOM, List.of("full"))));
    add("unknown rig", FloorRule.JOB_PLANNED_ONCE, "attic", 1, day -> day.planned("attic"));
  }

  private void fit() {
    add(
        "surface not offered",
        FloorRule.RIG_TAKES_JOB,
        "vase",
        1,
        day ->
            day.floor()
                .rigs(
                    FloorFixtures.table().build(),
                    FloorFixtures.platform().offers(Map.of("surface", Set.of("matt"))).build()));
    add(
        "unmeasured job",
        FloorRule.RIG_TAKES_JOB,
        "vase",
        1,
        day -> day.job("vase").item(new ItemBuilder().massKg(null).handsNeeded(2)));
  }

  private void order() {
    add(
        "unload before capture ends",
        FloorRule.JOB_ORDER,
        "book",
        10,
        day -> day.plan("book", b -> b.unload(clock("08:12:20"), clock("08:13:50"), "bo")));
    add(
        "capture before the lights are warm",
        FloorRule.JOB_ORDER,
        "lamp",
        20,
        day -> day.plan("lamp", b -> b.capture(clock("07:41:40"), clock("07:46:40"), "bo")));
    add(
        "capture later than it could be",
        FloorRule.JOB_ORDER,
        "vase",
        5,
        day ->
            day.plan(
                "vase",
                b ->
                    b.capture(clock("08:35:15"), clock("08:43:35"))
                        .unload(clock("08:43:35"), clock("08:45:05"), "ann", "bo")));
    add(
        "load before the changeover ends",
        FloorRule.JOB_ORDER,
        "lamp",
        30,
        day -> {
          day.floor()
              .crew(
                  FloorFixtures.operator("ann", "handle", "hang", "light", "service"),
                  FloorFixtures.operator("bo", "handle"),
                  FloorFixtures.operator("cy", "handle"));
          day.plan(
              "lamp",
              b ->
                  b.load(clock("07:34:30"), clock("07:37:00"), "cy")
                      .capture(clock("07:42:00"), clock("07:47:00"), "cy"));
        });
  }

  private void handsOnTimes() {
    add(
        "load too long",
        FloorRule.STEP_TIME,
        "book",
        10,
        day ->
            day.plan(
                "book",
                b ->
                    b.load(clock("07:59:50"), clock("08:02:30"), "bo")
                        .changeover(null, clock("07:59:50"))));
    add(
        "capture too short",
        FloorRule.STEP_TIME,
        "vase",
        7,
        day -> day.plan("vase", b -> b.capture(clock("08:35:10"), clock("08:43:23"))));
    add(
        "unload too short",
        FloorRule.STEP_TIME,
        "bag",
        4,
        day -> day.plan("bag", b -> b.unload(clock("08:37:00"), clock("08:39:26"), "ann")));
  }

  private void changeoverTimes() {
    add(
        "changeover too short",
        FloorRule.STEP_TIME,
        "bag",
        9,
        day ->
            day.plan(
                "bag",
                b ->
                    b.changeover(
                        at(clock("08:14:09"), clock("08:21:30"), "ann"), clock("08:21:30"))));
    add(
        "warm-up too short",
        FloorRule.STEP_TIME,
        "lamp",
        60,
        day ->
            day.plan(
                "lamp",
                b ->
                    b.changeover(
                            at(clock("07:30:00"), clock("07:35:00"), "ann", "bo"),
                            clock("07:41:00"))
                        .capture(clock("07:41:00"), clock("07:46:00"), "bo")));
  }

  private void wrongSteps() {
    add(
        "steps in another order",
        FloorRule.CHANGEOVER_STEPS,
        "lamp",
        2,
        day -> day.plan("lamp", b -> b.withoutSteps().step(120, 600, 1, "light").step(300, 0, 1)));
    add(
        "one person for a step for two",
        FloorRule.CHANGEOVER_STEPS,
        "vase",
        1,
        day ->
            day.plan(
                "vase",
                b ->
                    b.withoutSteps()
                        .step(240, 0, 1)
                        .step(100, 0, 1)
                        .changeover(
                            at(clock("08:28:40"), clock("08:32:40"), "ann", "bo"),
                            clock("08:32:40"))));
  }

  private void missingOrNeedlessSteps() {
    add(
        "setup change forgotten",
        FloorRule.CHANGEOVER_STEPS,
        "vase",
        2,
        day -> day.plan("vase", b -> b.withoutSteps().changeover(null, clock("08:32:40"))));
    add(
        "time without steps",
        FloorRule.CHANGEOVER_STEPS,
        "book",
        1,
        day ->
            day.plan(
                "book",
                b ->
                    b.changeover(
                        at(clock("07:59:00"), clock("08:00:00"), "bo"), clock("08:00:00"))));
    add(
        "service before it is due",
        FloorRule.CHANGEOVER_STEPS,
        "book",
        1,
        day ->
            day.plan(
                "book",
                b ->
                    b.step(300, 0, 1, "service")
                        .changeover(
                            at(clock("07:55:00"), clock("08:00:00"), "ann"), clock("08:00:00"))));
  }

  private void ring() {
    add(
        "service forgotten",
        FloorRule.RING_SERVICE,
        "table",
        1,
        day ->
            day.plan(
                "bag",
                b ->
                    b.withoutSteps()
                        .step(150, 0, 1, "hang")
                        .changeover(
                            at(clock("08:19:00"), clock("08:21:30"), "ann"), clock("08:21:30"))));
  }
}
