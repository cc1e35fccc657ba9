package rigmorrow.solver.hand;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.model.explain.Cost;
import rigmorrow.model.explain.JobTimes;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;

/**
 * What orders come to.
 *
 * @param plan with every time
 * @param cost of it
 */
public record Timed(Plan plan, Cost cost) {
  /**
   * The jobs that a plan of the same orders has at other times, rig by rig.
   *
   * @param written has every job of this one
   */
  public List<String> differing(Plan written) {
    List<String> differing = new ArrayList<>();
    for (RigPlan rig : written.rigs()) {
      for (PlannedJob job : rig.jobs()) {
        PlannedJob again = plan.job(job.job()).orElseThrow();
        boolean same =
            job.whole().equals(again.whole())
                && job.load().span().equals(again.load().span())
                && job.capture().equals(again.capture())
                && job.unload().span().equals(again.unload().span());
        if (!same) {
          differing.add(job.job());
        }
      }
    }
    return differing;
  }

  /**
   * Where and when a job is.
   *
   * @throws IllegalArgumentException when it is not planned
   */
  public JobTimes times(String job) {
    for (RigPlan rig : plan.rigs()) {
      for (int place = 0; place < rig.jobs().size(); place++) {
        PlannedJob one = rig.jobs().get(place);
        if (one.job().equals(job)) {
          return new JobTimes(
              rig.rig(),
              place,
              rig.jobs().size(),
              one.whole().start(),
              one.capture().end(),
              one.whole().end(),
              one.changeover() == null ? 0 : one.changeover().span().seconds(),
              one.lateSeconds());
        }
      }
    }
    throw new IllegalArgumentException(job + " is not planned");
  }
}
