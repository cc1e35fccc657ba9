package rigmorrow.app.board.make;

import java.util.List;
import rigmorrow.app.board.desk.BoardState;
import rigmorrow.app.board.desk.Glance;
import rigmorrow.app.board.view.BoardView;
import rigmorrow.app.board.view.BoardView.OperatorView;
import rigmorrow.app.report.PlanText;
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
   * @param searching whether a search runs
   * @throws IllegalArgumentException when the plan is of another batch
   */
  public BoardView of(Glance glance, boolean searching) {
    BoardState state = glance.state();
    Batch batch = state.batch();
    Plan plan = state.plan();
    PlanClock clock = PlanClock.of(batch);
    Shared shared = new Shared(batch, plan);
    List<OperatorView> crew = Crew.of(batch, plan);
    return new BoardView(
        state.revision(),
        glance.change(),
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
        Breaches.of(state.breaches()),
        glance.stamp().whole(),
        glance.undo(),
        glance.redo(),
        searching,
        PlanText.ADVICE);
  }
}
