package rigmorrow.model.verify;

import static rigmorrow.model.verify.Day.at;
import static rigmorrow.model.verify.Day.clock;
import static rigmorrow.model.verify.PlannedJobBuilder.at;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.ItemBuilder;
import rigmorrow.model.floor.Closure;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.KitUnit;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.shot.Hanging;

/** Plans whose rigs, people or kit are wanted twice at a time or are not there. */
final class BrokenTogether {
  private final List<Broken> all = new ArrayList<>();

  private BrokenTogether() {}

  static List<Broken> all() {
    BrokenTogether broken = new BrokenTogether();
    broken.rig();
    broken.twoTasks();
    broken.operatorHours();
    broken.skills();
    broken.people();
    broken.kit();
    return broken.all;
  }

  private void add(String name, FloorRule rule, String where, long amount, Consumer<Day> change) {
    all.add(new Broken(name, rule, where, amount, change));
  }

  private void rig() {
    add(
        "closed during a job",
        FloorRule.RIG_HOURS,
        "vase",
        120,
        day ->
            day.floor()
                .rigs(
                    FloorFixtures.table().build(),
                    FloorFixtures.platform()
                        .closed(new Closure(at("08:36"), at("08:38"), "repair"))
                        .build()));
    add(
        "opens after the job starts",
        FloorRule.RIG_HOURS,
        "lamp",
        300,
        day ->
            day.floor()
                .rigs(
                    FloorFixtures.table().build(),
                    // The table still opens at 07:00, so that the finishing time counts from there.
                    FloorFixtures.platform().open(FloorFixtures.hours("07:35", "18:00")).build()));
    add(
        "next job before the first is off",
        FloorRule.RIG_ONE_JOB,
        "table",
        10,
        day -> day.plan("book", b -> b.moved(10).late(40)));
    add("ends after the last day", FloorRule.WITHIN_PLAN, "book", 540, BrokenTogether::lateShift);
  }

  private void twoTasks() {
    add(
        "two things at once",
        FloorRule.OPERATOR_ONE_TASK,
        "ann",
        10,
        day -> day.plan("vase", b -> b.moved(-10)));
    add(
        "two things at once while capture is attended",
        FloorRule.OPERATOR_ONE_TASK,
        "bo",
        150,
        // Loads the book from 07:38:00 to 07:40:30, while the lamp waits for its lights.
        day -> day.plan("book", b -> b.moved(clock("07:38:00") - clock("08:00:00")).late(0)));
  }

  private void operatorHours() {
    add(
        "absent during the load",
        FloorRule.OPERATOR_HOURS,
        "bo",
        120,
        day ->
            day.floor()
                .crew(
                    FloorFixtures.operator("ann", "handle", "hang", "light", "power", "service"),
                    new Operator(
                        "bo",
                        "bo",
                        Set.of("handle"),
                        List.of(FloorFixtures.hours("07:30", "16:30")),
                        List.of(),
                        List.of(new Closure(at("08:00"), at("08:02"), "course")))));
    add(
        "break during attended capture",
        FloorRule.OPERATOR_HOURS,
        "bo",
        60,
        day ->
            day.floor()
                .crew(
                    FloorFixtures.operator("ann", "handle", "hang", "light", "power", "service"),
                    new Operator(
                        "bo",
                        "bo",
                        Set.of("handle"),
                        List.of(FloorFixtures.hours("07:30", "16:30")),
                        List.of(FloorFixtures.hours("07:40", "07:41")),
                        List.of())));
  }

  private void skills() {
    add(
        "hangs without the skill",
        FloorRule.OPERATOR_SKILLS,
        "bo",
        1,
        day -> day.plan("bag", b -> b.load(clock("08:21:30"), clock("08:27:00"), "bo")));
    add(
        "the one in charge of the changeover lacks the skill",
        FloorRule.OPERATOR_SKILLS,
        "bo",
        1,
        day ->
            day.plan(
                "lamp",
                b ->
                    b.changeover(
                        at(clock("07:30:00"), clock("07:35:00"), "bo", "ann"), clock("07:42:00"))));
  }

  private void people() {
    add(
        "one person for two",
        FloorRule.ENOUGH_PEOPLE,
        "vase",
        1,
        day -> day.plan("vase", b -> b.unload(clock("08:43:30"), clock("08:45:00"), "ann")));
    add(
        "the same person twice",
        FloorRule.ENOUGH_PEOPLE,
        "vase",
        1,
        day -> day.plan("vase", b -> b.unload(clock("08:43:30"), clock("08:45:00"), "ann", "ann")));
    add(
        "somebody who is not of the crew",
        FloorRule.ENOUGH_PEOPLE,
        "vase",
        1,
        day -> day.plan("vase", b -> b.unload(clock("08:43:30"), clock("08:45:00"), "ann", "zed")));
    add(
        "nobody stays during attended capture",
        FloorRule.ENOUGH_PEOPLE,
        "lamp",
        1,
        day -> day.plan("lamp", b -> b.capture(clock("07:42:00"), clock("07:47:00"))));
  }

  private void kit() {
    add(
        "fetched from where it is not",
        FloorRule.KIT_ONE_PLACE,
        "head-1",
        1,
        day -> day.plan("bag", b -> b.kit(new KitUse("head", "head-1", "platform"))));
    add(
        "kit that is not needed",
        FloorRule.KIT_ONE_PLACE,
        "book",
        1,
        day ->
            day.plan("book", b -> b.kit(new KitUse("head", "head-1", "shelf")))
                .plan(
                    "bag",
                    b ->
                        b.kit(new KitUse("head", "head-1", "table"))
                            .withoutSteps()
                            .step(300, 0, 1, "service")
                            .changeover(
                                at(clock("08:16:30"), clock("08:21:30"), "ann"),
                                clock("08:21:30"))));
    add(
        "used by two jobs at once",
        FloorRule.KIT_ONE_PLACE,
        "head-1",
        750,
        BrokenTogether::bothHang);
    add(
        "taken off a rig that is at a job",
        FloorRule.KIT_TAKEN_OFF,
        "table",
        120,
        BrokenTogether::takenOffAbove);
  }

  /** Everybody works through midnight, and the book's unloading ends at 00:09 of the next day. */
  private static void lateShift(Day day) {
    List.of("bag", "lamp", "vase").forEach(day::drop);
    day.floor()
        .rigs(
            FloorFixtures.table().open(FloorFixtures.hours("18:00", "06:00")).build(),
            FloorFixtures.platform().open(FloorFixtures.hours("18:00", "06:00")).build());
    day.floor()
        .crew(
            new Operator(
                "bo",
                "bo",
                Set.of("handle"),
                List.of(FloorFixtures.hours("20:00", "04:00")),
                List.of(),
                List.of()));
    day.job("book").shouldBy(at("23:59").plusDays(1));
    day.plan("book", b -> b.moved(clock("15:55:00")).late(0));
  }

  /** The head hangs over the table from the start, and is fetched while the book turns there. */
  private static void takenOffAbove(Day day) {
    day.drop("bag");
    Kit head = FloorFixtures.head();
    day.floor()
        .kits(
            new Kit(
                head.id(),
                head.label(),
                head.provides(),
                List.of(new KitUnit("head-1", "table")),
                head.alignSeconds(),
                head.people(),
                head.skills(),
                head.caution()));
    day.job("book").shouldBy(at("08:37"));
    day.plan("book", b -> b.moved(25 * 60));
    hangVase(day, clock("08:28:00"));
  }

  /** The vase hangs too, and the head comes from the table while the bag still hangs from it. */
  private static void bothHang(Day day) {
    hangVase(day, clock("08:27:00"));
  }

  private static void hangVase(Day day, int start) {
    day.job("vase")
        .item(new ItemBuilder().handsNeeded(2).massKg(2.0).hanging(new Hanging(2, 900, false)));
    // Ann is free for the vase once the bag is off.
    int load = clock("08:39:30");
    day.plan(
        "vase",
        b ->
            b.withoutSteps()
                .step(210, 0, 1, "hang")
                .step(240, 0, 1)
                .step(100, 0, 2)
                .kit(new KitUse("head", "head-1", "table"))
                .changeover(at(start, start + 340, "ann", "bo"), start + 340)
                .load(load, load + 330, "ann", "bo")
                .capture(load + 330, load + 830)
                .unload(load + 830, load + 980, "ann", "bo"));
  }
}
