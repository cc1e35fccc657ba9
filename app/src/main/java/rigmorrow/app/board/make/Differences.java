package rigmorrow.app.board.make;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.desk.BoardState;
import rigmorrow.app.board.desk.Kept;
import rigmorrow.app.board.view.VersionView.DifferenceView;
import rigmorrow.app.board.view.VersionView.MoveView;
import rigmorrow.app.explain.CostChanges;
import rigmorrow.app.report.Times;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.ShotJob;

/** How two plans differ, job by job, for the page. */
public final class Differences {
  private final BoardState before;
  private final BoardState after;
  private final Times timesBefore;
  private final Times timesAfter;
  private final Map<String, Placed> old;
  private final Map<String, Placed> now;

  private record Placed(String rig, int place, PlannedJob job) {}

  private Differences(BoardState before, BoardState after) {
    this.before = before;
    this.after = after;
    this.timesBefore = Times.of(before.batch());
    this.timesAfter = Times.of(after.batch());
    this.old = placed(before.plan());
    this.now = placed(after.plan());
  }

  /** The view of two plans with their costs. */
  public static DifferenceView of(Kept first, Kept second) {
    BoardState before = first.state();
    BoardState after = second.state();
    Differences differences = new Differences(before, after);
    return new DifferenceView(
        Figures.of(before.batch(), before.plan()),
        Figures.of(after.batch(), after.plan()),
        CostChanges.of(first.cost(), second.cost(), differences.timesAfter),
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
        moves.add(new MoveView(job.id(), job.name(), sentence));
      }
    }
    return moves;
  }

  /** What is otherwise with a job; null when nothing is. */
  private @Nullable String sentence(String id, @Nullable ShotJob first, @Nullable ShotJob second) {
    if (first == null) {
      return "Only in the second shot list: " + where(now.get(id), timesAfter) + ".";
    }
    if (second == null) {
      return "Only in the first shot list: " + where(old.get(id), timesBefore) + ".";
    }
    Placed was = old.get(id);
    Placed is = now.get(id);
    String from = where(was, timesBefore);
    String to = where(is, timesAfter);
    return from.equals(to) ? null : "From " + from + " to " + to + ".";
  }

  private static String where(@Nullable Placed placed, Times times) {
    if (placed == null) {
      return "left out";
    }
    PlannedJob job = placed.job();
    return "%s, place %d, %s%s"
        .formatted(
            placed.rig(),
            placed.place() + 1,
            times.span(job.whole().start(), job.whole().end()),
            job.lateSeconds() == 0 ? "" : ", " + Times.exact(job.lateSeconds()) + " late");
  }

  private static Map<String, ShotJob> byId(BoardState state) {
    Map<String, ShotJob> jobs = new HashMap<>();
    state.batch().shotList().jobs().forEach(job -> jobs.put(job.id(), job));
    return jobs;
  }

  private static Map<String, Placed> placed(Plan plan) {
    Map<String, Placed> placed = new HashMap<>();
    for (RigPlan rig : plan.rigs()) {
      for (int place = 0; place < rig.jobs().size(); place++) {
        PlannedJob job = rig.jobs().get(place);
        placed.put(job.job(), new Placed(rig.rig(), place, job));
      }
    }
    return placed;
  }
}
