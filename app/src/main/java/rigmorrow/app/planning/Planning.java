package rigmorrow.app.planning;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import rigmorrow.app.report.Times;
import rigmorrow.app.terminal.Session;
import rigmorrow.app.terminal.StatusLine;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.SolverSettings;

/**
 * Makes a plan and has it checked.
 *
 * @param batch what was planned
 * @param plan the plan
 * @param dispatch what dispatch rules alone came to
 * @param breaches hard rules the plan breaks
 */
public record Planning(Batch batch, Plan plan, PlanFigures dispatch, List<Breach> breaches) {

  public Planning {
    breaches = List.copyOf(breaches);
  }

  /**
   * Plans a batch; Ctrl-C ends the search early.
   *
   * @param firstOnly true to stop at what dispatch rules give
   * @throws IllegalStateException when the plan breaks a rule that the search believes kept: a
   *     fault of ours
   */
  public static Planning of(
      Batch batch, SolverSettings settings, boolean firstOnly, Session session) {
    session.stop().searchBegins();
    session.note(
        "planning %d jobs on %d rigs; Ctrl-C keeps the best plan so far"
            .formatted(batch.shotList().jobs().size(), batch.floor().rigs().size()));
    Plan first = FloorSolver.dispatch(batch);
    Plan plan = firstOnly ? FloorSolver.withBounds(batch, first) : search(batch, settings, session);
    List<Breach> breaches = PlanChecker.check(batch, plan);
    if (plan.figures().hard() == 0 && !breaches.isEmpty()) {
      throw new IllegalStateException(
          "the plan fails the independent check: "
              + breaches.stream().map(Breach::sentence).collect(Collectors.joining("; ")));
    }
    return new Planning(batch, plan, first.figures(), breaches);
  }

  /** Says when promises cannot be kept because they lie before anything is planned. */
  public static void noteEarlyPromises(Batch batch, Session session) {
    LocalDate first = batch.shotList().date();
    long early =
        batch.shotList().jobs().stream()
            .map(ShotJob::promise)
            .filter(promise -> promise != null && promise.dueAt().toLocalDate().isBefore(first))
            .count();
    if (early > 0) {
      session.note(
          (early == 1 ? "1 promise lies" : early + " promises lie")
              + " before the first planned day "
              + first);
    }
  }

  private static Plan search(Batch batch, SolverSettings settings, Session session) {
    StatusLine line = new StatusLine(session.console());
    try {
      return FloorSolver.solve(
          batch, settings, new SearchProgress(line, session.stop(), Times.of(batch)));
    } finally {
      line.clear();
    }
  }

  /** True when the plan can be worked: no rule broken, and not everything left out. */
  public boolean workable() {
    boolean nothing = plan.figures().planned() == 0 && plan.figures().leftOut() > 0;
    return breaches.isEmpty() && !nothing;
  }

  /** How many jobs fit somewhere, fit nowhere and need measuring, as a sentence. */
  public static String fitInShort(Batch batch) {
    FitCheck check = new FitCheck(batch.floor());
    List<JobFit> fits = batch.shotList().jobs().stream().map(check::of).toList();
    long somewhere = fits.stream().filter(JobFit::fitsSomewhere).count();
    long unmeasured = fits.stream().filter(JobFit::needsMeasuring).count();
    return "%d jobs: %d fit somewhere, %d fit nowhere, %d need measuring"
        .formatted(fits.size(), somewhere, fits.size() - somewhere - unmeasured, unmeasured);
  }
}
