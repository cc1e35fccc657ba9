package rigmorrow.app.board.make;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.view.BoardView;
import rigmorrow.app.board.view.BoardView.OperatorView;
import rigmorrow.app.report.PlanText;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.time.PlanClock;

/** Everything the page shows of one plan. For any thread. */
public final class BoardViews {
  private final FitBook fits;

  /**
   * @param fits asks about each job once
   */
  public BoardViews(FitBook fits) {
    this.fits = fits;
  }

  /**
   * The view of a plan.
   *
   * @param breaches hard rules that it breaks
   * @param undo what would be undone; null for nothing
   * @param redo what would be done again; null for nothing
   * @param searching whether a search runs
   * @throws IllegalArgumentException when the plan is of another batch
   */
  public BoardView of(
      long revision,
      Batch batch,
      Plan plan,
      List<Breach> breaches,
      @Nullable String undo,
      @Nullable String redo,
      boolean searching) {
    PlanClock clock = PlanClock.of(batch);
    Shared shared = new Shared(batch, plan);
    List<OperatorView> crew = Crew.of(batch, plan);
    return new BoardView(
        revision,
        batch.floor().name(),
        clock.zone().getId(),
        clock.date().toString(),
        clock.days(),
        clock.at(0).toInstant().toEpochMilli(),
        clock.horizonSeconds(),
        Rigs.of(batch, plan),
        crew,
        shared.kits(),
        shared.samples(),
        new Jobs(batch, plan).all(fits.of(batch)),
        Figures.of(batch, plan),
        CrewHours.of(crew, clock.horizonSeconds()),
        Breaches.of(breaches),
        undo,
        redo,
        searching,
        PlanText.ADVICE);
  }
}
