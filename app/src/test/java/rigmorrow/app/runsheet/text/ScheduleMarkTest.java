package rigmorrow.app.runsheet.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import rigmorrow.app.runsheet.SampleDay;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotList;
import rigmorrow.model.time.Span;
import rigmorrow.solver.FloorSolver;

/** One thing is changed at a time, each of which the crew reads on a sheet. */
class ScheduleMarkTest {
  private static final LocalDateTime NINE = SampleDay.SUMMER.atTime(9, 0);
  private static final ChangeoverStep STEP =
      new ChangeoverStep("Mount the head", 60, 30, 1, Set.of());
  private static final KitUse HEAD = new KitUse("rotator-head", "RH-1", "R2");
  private static final PlannedJob LAMP =
      new PlannedJob(
          "J4",
          List.of(STEP),
          by(0, 60, "ann"),
          90,
          by(90, 120, "ann"),
          new Span(120, 600),
          List.of("ann"),
          by(600, 630, "ann"),
          List.of(HEAD),
          5);
  private static final LeftOut VASE =
      new LeftOut("J6", LeftOut.Cause.NEEDS_MEASURING, List.of("Height is not known."));

  private final Batch batch = timed(timed(SampleDay.batch(SampleDay.SUMMER), "J4"), "J6");
  private final Plan plan =
      with(
          with(
              FloorSolver.dispatch(batch),
              "rigs",
              List.of(new RigPlan("R1", List.of(LAMP)), new RigPlan("R2", List.of()))),
          "leftOut",
          List.of(VASE));
  private final Map<String, String> marks = new LinkedHashMap<>();

  private static Attended by(int from, int to, String... people) {
    return new Attended(new Span(from, to), List.of(people));
  }

  @Test
  void eachTimeThatIsAskedOfAJobMakesAnother() {
    for (String id : List.of("J4", "J6")) {
      asked(id, "due", "promise", new Promise(NINE.plusHours(2), false));
      asked(id, "must", "promise", new Promise(NINE, true));
      asked(id, "due at another day's same time", "promise", new Promise(NINE.plusDays(1), false));
      asked(id, "no promise", "promise", null);
      asked(id, "arrives", "arrivesAt", NINE.minusHours(2));
      asked(id, "is there", "arrivesAt", null);
      asked(id, "off by", "leavesAt", NINE.plusHours(5));
      asked(id, "stays", "leavesAt", null);
      asked(id, "article", "article", "1");
      asked(id, "name", "name", "1");
    }
    allDiffer();
    Batch noted = changed(batch, "J4", "note", "Mind the shade");
    assertThat(ScheduleMark.of(noted, plan))
        .as("a note is no part of a schedule")
        .isEqualTo(ScheduleMark.of(batch, plan));
  }

  @Test
  void eachTimePersonPieceAndStepOfAPlannedJobMakesAnother() {
    planned("step's text", "steps", List.of(with(STEP, "text", "Mount it")));
    planned("step's time", "steps", List.of(with(STEP, "attendedSeconds", 61)));
    planned("step's tail", "steps", List.of(with(STEP, "unattendedSeconds", 31)));
    planned("step's people", "steps", List.of(with(STEP, "people", 2)));
    planned("no step", "steps", List.of());
    planned("two steps", "steps", List.of(STEP, STEP));
    planned("no changeover", "changeover", null);
    for (String part : List.of("changeover", "load", "unload")) {
      Attended now = part.equals("changeover") ? LAMP.changeover() : part(part);
      int from = now.span().start();
      int to = now.span().end();
      planned(part + " from", part, by(from + 1, to, "ann"));
      planned(part + " to", part, by(from, to + 1, "ann"));
      planned(part + " by another", part, by(from, to, "bob"));
      planned(part + " by two", part, by(from, to, "ann", "bob"));
      planned(part + " in charge", part, by(from, to, "bob", "ann"));
    }
    planned("ready", "warmedUpAt", 91);
    planned("capture from", "capture", new Span(121, 600));
    planned("capture to", "capture", new Span(120, 599));
    planned("capture alone", "captureOperators", List.of());
    planned("capture by another", "captureOperators", List.of("bob"));
    for (String component : List.of("kit", "unit", "from")) {
      planned("kit's " + component, "kit", List.of(with(HEAD, component, "x")));
    }
    planned("no kit", "kit", List.of());
    planned("late", "lateSeconds", 6);
    planned("another job", "job", "J5");
    allDiffer();
  }

  @Test
  void theDaysTheRigsAndWhatIsLeftOutMakeAnother() {
    whole("zone", "zone", ZoneId.of("Europe/London"));
    whole("date", "date", LocalDate.of(2026, 6, 2));
    whole("days", "days", 2);
    whole("on another rig", "rigs", List.of(rig("R1"), rig("R2", LAMP)));
    whole("on a rig of another name", "rigs", List.of(rig("R3", LAMP), rig("R2")));
    whole("a rig less", "rigs", List.of(rig("R1", LAMP)));
    whole("twice", "rigs", List.of(rig("R1", LAMP, LAMP), rig("R2")));
    whole("nothing left out", "leftOut", List.of());
    whole("another left out", "leftOut", List.of(with(VASE, "job", "J5")));
    whole("cause", "leftOut", List.of(with(VASE, "cause", LeftOut.Cause.NO_ROOM)));
    whole("sentence", "leftOut", List.of(with(VASE, "sentences", List.of("Mass is not known."))));
    allDiffer();
  }

  private static RigPlan rig(String id, PlannedJob... jobs) {
    return new RigPlan(id, List.of(jobs));
  }

  private static Attended part(String name) {
    return name.equals("load") ? LAMP.load() : LAMP.unload();
  }

  private static Batch timed(Batch batch, String id) {
    Batch due = changed(batch, id, "promise", new Promise(NINE, false));
    Batch coming = changed(due, id, "arrivesAt", NINE.minusHours(1));
    return changed(coming, id, "leavesAt", NINE.plusHours(4));
  }

  private static Batch changed(Batch batch, String id, String component, @Nullable Object value) {
    ShotList list = batch.shotList().withJob(id, job -> with(job, component, value));
    return new Batch(batch.floor(), list);
  }

  private void asked(String id, String what, String component, @Nullable Object value) {
    marks.put(id + " " + what, ScheduleMark.of(changed(batch, id, component, value), plan));
  }

  private void planned(String what, String component, @Nullable Object value) {
    whole(what, "rigs", List.of(rig("R1", with(LAMP, component, value)), rig("R2")));
  }

  private void whole(String what, String component, @Nullable Object value) {
    marks.put(what, ScheduleMark.of(batch, with(plan, component, value)));
  }

  private void allDiffer() {
    Set<String> seen = new HashSet<>(Set.of(ScheduleMark.of(batch, plan)));
    marks.forEach((what, mark) -> assertThat(seen.add(mark)).as(what).isTrue());
  }

  /** The same record with one component otherwise. */
  private static <R extends Record> R with(R record, String name, @Nullable Object value) {
    RecordComponent[] components = record.getClass().getRecordComponents();
    Class<?>[] types = new Class<?>[components.length];
    Object[] values = new Object[components.length];
    boolean found = false;
    try {
      for (int i = 0; i < components.length; i++) {
        boolean here = components[i].getName().equals(name);
        found |= here;
        types[i] = components[i].getType();
        values[i] = here ? value : components[i].getAccessor().invoke(record);
      }
      assertThat(found).as(name).isTrue();
      @SuppressWarnings("unchecked") // the class of the record given
      R other = (R) record.getClass().getDeclaredConstructor(types).newInstance(values);
      return other;
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(name, e);
    }
  }
}
