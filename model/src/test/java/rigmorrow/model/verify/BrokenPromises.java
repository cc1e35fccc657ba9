package rigmorrow.model.verify;

import static rigmorrow.model.verify.Day.at;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;

/**
 * Plans that break a promise, a pin, what is left out by hand or a sample's times, or state wrong
 * figures.
 */
final class BrokenPromises {
  private final List<Broken> all = new ArrayList<>();

  private BrokenPromises() {}

  static List<Broken> all() {
    BrokenPromises broken = new BrokenPromises();
    broken.sample();
    broken.must();
    broken.pins();
    broken.heldBack();
    broken.figures();
    return broken.all;
  }

  private void add(String name, FloorRule rule, String where, long amount, Consumer<Day> change) {
    all.add(new Broken(name, rule, where, amount, change));
  }

  private void sample() {
    add(
        "one sample on two rigs",
        FloorRule.SAMPLE_ONE_PLACE,
        "twin",
        750,
        day -> {
          day.job("bag").sample("twin");
          day.job("vase").sample("twin");
        });
    add(
        "starts before it arrives",
        FloorRule.SAMPLE_ARRIVED,
        "bag",
        60,
        day -> day.job("bag").arrivesAt(at("08:15")));
    add(
        "leaves before it is off",
        FloorRule.SAMPLE_LEAVES,
        "bag",
        30,
        day -> day.job("bag").leavesAt(at("08:39")));
  }

  private void must() {
    add(
        "must be taken by then",
        FloorRule.MUST_PROMISE,
        "book",
        30,
        day -> day.job("book").mustBy(at("08:12")));
  }

  private void pins() {
    add(
        "starts later than pinned",
        FloorRule.PIN_KEPT,
        "lamp",
        60,
        day -> pin(day, new Pin("lamp", "platform", 0, at("07:29"), PinState.PLANNED)));
    add(
        "on another rig than pinned",
        FloorRule.PIN_KEPT,
        "lamp",
        1,
        day -> pin(day, new Pin("lamp", "table", 0, at("07:30"), PinState.PLANNED)));
    add(
        "at another place than pinned",
        FloorRule.PIN_KEPT,
        "lamp",
        1,
        day -> pin(day, new Pin("lamp", "platform", 1, at("07:30"), PinState.PLANNED)));
    add(
        "pinned and left out",
        FloorRule.PIN_KEPT,
        "piece",
        1,
        day -> day.pins().add(new Pin("piece", "table", null, null, PinState.PLANNED)));
  }

  private void heldBack() {
    add(
        "planned though left out by hand",
        FloorRule.HELD_BACK,
        "vase",
        1,
        day -> day.heldBack().add("vase"));
  }

  private void figures() {
    figure("hard", f -> with(f, 0, 8));
    figure("leftOutPoints", f -> with(f, 1, 8));
    figure("latenessPoints", f -> with(f, 2, 8));
    figure("changeoverPoints", f -> with(f, 3, 8));
    figure("finishingPoints", f -> with(f, 4, 8));
    figure("planned", f -> with(f, 5, 8));
    figure("leftOut", f -> with(f, 6, 8));
    figure("lateJobs", f -> with(f, 7, 8));
    figure("lateSeconds", f -> with(f, 8, 8));
    figure("changeoverSeconds", f -> with(f, 9, 8));
    figure("finishedAt", f -> with(f, 10, 8));
    add(
        "late seconds of a job",
        FloorRule.FIGURES,
        "book",
        8,
        day -> day.plan("book", b -> b.late(38)));
  }

  private static void pin(Day day, Pin pin) {
    day.pins().clear();
    day.pins().add(pin);
  }

  private void figure(String name, UnaryOperator<PlanFigures> change) {
    add(name, FloorRule.FIGURES, name, 8, day -> day.figures(change));
  }

  /** The figures with the one of this index (in the record's order) raised. */
  private static PlanFigures with(PlanFigures f, int index, int more) {
    long[] v = {
      f.hard(),
      f.leftOutPoints(),
      f.latenessPoints(),
      f.changeoverPoints(),
      f.finishingPoints(),
      f.planned(),
      f.leftOut(),
      f.lateJobs(),
      f.lateSeconds(),
      f.changeoverSeconds(),
      f.finishedAt()
    };
    v[index] += more;
    return new PlanFigures(
        v[0], v[1], v[2], v[3], v[4], (int) v[5], (int) v[6], (int) v[7], v[8], v[9], (int) v[10]);
  }
}
