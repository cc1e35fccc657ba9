package rigmorrow.app.board.make;

import java.util.HashSet;
import java.util.Set;
import rigmorrow.app.board.view.FiguresView;
import rigmorrow.app.report.BoundText;
import rigmorrow.app.report.Counted;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;

/** What a plan comes to, for the page. */
public final class Figures {
  private Figures() {}

  /** The figures of a plan of a batch. */
  public static FiguresView of(Batch batch, Plan plan) {
    PlanFigures figures = plan.figures();
    PlanBounds bounds = plan.bounds();
    Set<String> inTime = new HashSet<>();
    plan.rigs().stream()
        .flatMap(rig -> rig.jobs().stream())
        .filter(job -> job.lateSeconds() == 0)
        .map(PlannedJob::job)
        .forEach(inTime::add);
    int promises = 0;
    int kept = 0;
    for (ShotJob job : batch.shotList().jobs()) {
      if (job.promise() != null) {
        promises++;
        kept += inTime.contains(job.id()) ? 1 : 0;
      }
    }
    return new FiguresView(
        figures.hard(),
        figures.leftOutPoints(),
        figures.latenessPoints(),
        figures.changeoverPoints(),
        figures.finishingPoints(),
        figures.softPoints(),
        figures.planned(),
        figures.leftOut(),
        figures.lateJobs(),
        figures.lateSeconds(),
        promises,
        kept,
        figures.changeoverSeconds(),
        figures.finishedAt(),
        bounds == null ? null : BoundText.of(figures, bounds, heldBack(batch)),
        bounds == null ? null : bounds.softPoints(),
        method(plan.origin()));
  }

  private static int heldBack(Batch batch) {
    return batch.shotList().heldBack().size();
  }

  private static String method(PlanOrigin origin) {
    return switch (origin.method()) {
      case "dispatch" -> "Made by dispatch rules, without a search.";
      case "search" ->
          "Found by %s with seed %d, ended by %s."
              .formatted(
                  Counted.of(origin.solvers(), "search", "searches side by side"),
                  origin.seed(),
                  origin.stopped());
      case "hand" -> "Changed by hand.";
      default -> "Made by: " + origin.method() + ".";
    };
  }
}
