package rigmorrow.benchmarks.run;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.solver.SolveListener;

/** Remembers how the best score of one search fell over time. */
final class Course implements SolveListener {
  private final List<Moment> told = new ArrayList<>();

  @Override
  public synchronized void improved(Duration elapsed, PlanFigures figures) {
    told.add(new Moment(elapsed.toMillis(), Score.of(figures)));
  }

  @Override
  public boolean stopRequested() {
    return false;
  }

  /**
   * The best score at each moment of the grid at which it is another than at the one before. A peer
   * tells of plans now and then only, so its last plan counts from the moment it ended.
   */
  synchronized List<Moment> thinned(long limitMillis, long tookMillis, Score end) {
    List<Moment> all = new ArrayList<>(told);
    all.add(new Moment(Math.min(tookMillis, limitMillis), end));
    List<Moment> course = new ArrayList<>();
    Score last = null;
    for (long millis : Moment.grid(limitMillis)) {
      Score best = null;
      for (Moment moment : all) {
        if (moment.millis() <= millis && (best == null || moment.score().compareTo(best) < 0)) {
          best = moment.score();
        }
      }
      if (best != null && !best.equals(last)) {
        course.add(new Moment(millis, best));
        last = best;
      }
    }
    return course;
  }
}
