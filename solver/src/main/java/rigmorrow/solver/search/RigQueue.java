package rigmorrow.solver.search;

import java.util.ArrayList;
import java.util.List;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.variable.PlanningListVariable;

/**
 * The planning entity: a rig with its sequence of jobs. The queue after the last rig is the
 * backlog, which holds what is left out; its order means nothing.
 */
@PlanningEntity
public class RigQueue {
  /** Name of the list variable. */
  static final String JOBS = "jobs";

  private int rig;

  // The one decision.
  @PlanningListVariable(valueRangeProviderRefs = "jobs")
  private List<QueuedJob> jobs = new ArrayList<>();

  /** For the planning library. */
  public RigQueue() {}

  RigQueue(int rig, List<QueuedJob> jobs) {
    this.rig = rig;
    this.jobs = new ArrayList<>(jobs);
  }

  /** Number of the rig; the number of rigs for the backlog. */
  public int rig() {
    return rig;
  }

  /** Jobs in order. */
  public List<QueuedJob> getJobs() {
    return jobs;
  }

  /** For the planning library. */
  public void setJobs(List<QueuedJob> jobs) {
    this.jobs = jobs;
  }
}
