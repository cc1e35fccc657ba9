package rigmorrow.app.board.browser;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.solver.HandTimer;

/** Weeks of work on one board: more than anybody plans at once, for seeing how quick it is. */
final class ManyJobs {
  /** Some of them nobody measured, so that 5,000 are left to be drawn. */
  private static final int JOBS = 5_150;

  private ManyJobs() {}

  static Batch batch() {
    return Demo.batch(JOBS, 1, OpenBoard.DAY);
  }

  /** Every job on the rig that has the fewest of those that take it, in the order of the list. */
  static Plan plan(Batch batch) {
    HandTimer timer = new HandTimer(batch.floor());
    List<List<String>> orders = new ArrayList<>();
    batch.floor().rigs().forEach(rig -> orders.add(new ArrayList<>()));
    for (ShotJob job : batch.shotList().jobs()) {
      JobFit fit = timer.fit(job);
      IntStream.range(0, fit.rigs().size())
          .filter(rig -> fit.rigs().get(rig).fits())
          .boxed()
          .min(Comparator.comparingInt(rig -> orders.get(rig).size()))
          .ifPresent(rig -> orders.get(rig).add(job.id()));
    }
    PlanOrigin origin = new PlanOrigin("dispatch", 0, 1, 0, "done");
    return timer.time(batch, new Orders(orders), origin).plan();
  }
}
