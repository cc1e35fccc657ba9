package rigmorrow.model.plan;

import java.util.List;

/**
 * What one rig does, in order.
 *
 * @param rig id of the rig
 * @param jobs in the order they run
 */
public record RigPlan(String rig, List<PlannedJob> jobs) {
  public RigPlan {
    jobs = List.copyOf(jobs);
  }
}
