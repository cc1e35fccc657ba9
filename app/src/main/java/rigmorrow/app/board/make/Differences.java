package rigmorrow.app.board.make;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.desk.BoardState;
import rigmorrow.app.board.desk.Kept;
import rigmorrow.app.board.view.VersionView.DifferenceView;
import rigmorrow.app.board.view.VersionView.MoveView;
import rigmorrow.app.explain.CostChanges;
import rigmorrow.app.report.Durations;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.model.time.PlanClock;

/**
 * How two plans differ, job by job, for the page. Times are compared as local times of the floor,
 * to the minute; they are told with their date where the two shot lists are of different days.
 */
public final class Differences {
  private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter DAY_AND_HOUR =
      DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter DATE_AND_HOUR =
      DateTimeFormatter.ofPattern("EEE uuuu-MM-dd HH:mm", Locale.ENGLISH);

  private final BoardState before;
  private final BoardState after;
  private final Map<String, Placed> old;
  private final Map<String, Placed> now;

  private final Set<String> inBoth;
  private final boolean sameDays;

  /** Where a job is; equal where nobody would see a difference. */
  private record Placed(
      String rig, int place, LocalDateTime start, LocalDateTime end, int lateSeconds) {}

  private Differences(BoardState before, BoardState after) {
    this.before = before;
    this.after = after;
    this.old = placed(before);
    this.now = placed(after);
    ShotList first = before.batch().shotList();
    ShotList second = after.batch().shotList();
    this.inBoth = new HashSet<>(byId(before).keySet());
    inBoth.retainAll(byId(after).keySet());
    this.sameDays = first.date().equals(second.date()) && first.days() == second.days();
  }

  /** The view of two plans with their costs. */
  public static DifferenceView of(Kept first, Kept second) {
    BoardState before = first.state();
    BoardState after = second.state();
    Differences differences = new Differences(before, after);
    return new DifferenceView(
        Figures.of(before.batch(), before.plan()),
        Figures.of(after.batch(), after.plan()),
        CostChanges.of(first.cost(), second.cost(), before.plan(), after.plan(), after.batch()),
        differences.moves());
  }

  private List<MoveView> moves() {
    List<MoveView> moves = new ArrayList<>();
    Map<String, ShotJob> jobs = new LinkedHashMap<>();
    before.batch().shotList().jobs().forEach(job -> jobs.put(job.id(), job));
    after.batch().shotList().jobs().forEach(job -> jobs.put(job.id(), job));
    Map<String, ShotJob> inFirst = byId(before);
    Map<String, ShotJob> inSecond = byId(after);
    for (ShotJob job : jobs.values()) {
      String sentence = sentence(job.id(), inFirst.get(job.id()), inSecond.get(job.id()));
      if (sentence != null) {
        moves.add(new MoveView(job.id(), job.name(), group(job.id()), sentence));
      }
    }
    return moves;
  }

  /** Jobs of one group are told together: the same happens to them. */
  private String group(String id) {
    Placed was = old.get(id);
    Placed is = now.get(id);
    if (!inBoth.contains(id)) {
      return "Only in one of the shot lists";
    }
    if (Objects.equals(was, is)) {
      return "Where they were, with another promise, weight or pin";
    }
    if (was == null) {
      return is == null ? "Left out in both" : "Taken in, to " + is.rig();
    }
    if (is == null) {
      return "Left out now, from " + was.rig();
    }
    if (!was.rig().equals(is.rig())) {
      return "From " + was.rig() + " to " + is.rig();
    }
    return "On "
        + is.rig()
        + (was.place() == is.place() ? ", at another time" : ", at another place");
  }

  /** What is otherwise with a job; null when nothing is. */
  private @Nullable String sentence(String id, @Nullable ShotJob first, @Nullable ShotJob second) {
    if (first == null) {
      return "Only in the second shot list: " + where(now.get(id)) + ".";
    }
    if (second == null) {
      return "Only in the first shot list: " + where(old.get(id)) + ".";
    }
    List<String> changes = new ArrayList<>();
    if (!Objects.equals(old.get(id), now.get(id))) {
      changes.add("From " + where(old.get(id)) + " to " + where(now.get(id)) + ".");
    }
    if (!Objects.equals(first.promise(), second.promise())) {
      changes.add(
          "Promise: " + due(second.promise()) + " instead of " + due(first.promise()) + ".");
    }
    if (first.weight() != second.weight()) {
      changes.add("Counts " + second.weight() + " instead of " + first.weight() + ".");
    }
    Pin was = before.batch().shotList().pin(id).orElse(null);
    Pin is = after.batch().shotList().pin(id).orElse(null);
    if (!Objects.equals(was, is)) {
      changes.add("Pin: " + pin(is) + " instead of " + pin(was) + ".");
    }
    return changes.isEmpty() ? null : String.join(" ", changes);
  }

  private String where(@Nullable Placed placed) {
    if (placed == null) {
      return "left out";
    }
    LocalDateTime start = placed.start();
    LocalDateTime end = placed.end();
    boolean sameDay = start.toLocalDate().equals(end.toLocalDate());
    return "%s, place %d, %s-%s%s"
        .formatted(
            placed.rig(),
            placed.place() + 1,
            time(start),
            sameDay ? end.format(HOUR) : time(end),
            placed.lateSeconds() == 0 ? "" : ", " + Durations.late(placed.lateSeconds()) + " late");
  }

  private String due(@Nullable Promise promise) {
    return promise == null ? "none" : time(promise.dueAt()) + (promise.must() ? " as a must" : "");
  }

  private String pin(@Nullable Pin pin) {
    if (pin == null) {
      return "none";
    }
    Integer place = pin.place();
    LocalDateTime startsAt = pin.startsAt();
    return pin.rig()
        + (place == null ? "" : ", place " + (place + 1))
        + (startsAt == null ? "" : ", starting at " + time(startsAt))
        + (pin.state() == PinState.PLANNED
            ? ""
            : ", " + pin.state().name().toLowerCase(Locale.ROOT));
  }

  /** Hour and minute; with as much of the date as is needed to know which day is meant. */
  private String time(LocalDateTime at) {
    ShotList list = after.batch().shotList();
    long day = ChronoUnit.DAYS.between(list.date(), at.toLocalDate());
    boolean planned = sameDays && day >= 0 && day < list.days();
    return at.format(!planned ? DATE_AND_HOUR : list.days() == 1 ? HOUR : DAY_AND_HOUR);
  }

  private static Map<String, ShotJob> byId(BoardState state) {
    Map<String, ShotJob> jobs = new HashMap<>();
    state.batch().shotList().jobs().forEach(job -> jobs.put(job.id(), job));
    return jobs;
  }

  private static Map<String, Placed> placed(BoardState state) {
    PlanClock clock = PlanClock.of(state.batch());
    Map<String, Placed> placed = new HashMap<>();
    for (RigPlan rig : state.plan().rigs()) {
      for (int place = 0; place < rig.jobs().size(); place++) {
        PlannedJob job = rig.jobs().get(place);
        LocalDateTime start = minute(clock, job.whole().start());
        LocalDateTime end = minute(clock, job.whole().end());
        placed.put(job.job(), new Placed(rig.rig(), place, start, end, job.lateSeconds()));
      }
    }
    return placed;
  }

  private static LocalDateTime minute(PlanClock clock, int second) {
    return clock.at(second).toLocalDateTime().truncatedTo(ChronoUnit.MINUTES);
  }
}
