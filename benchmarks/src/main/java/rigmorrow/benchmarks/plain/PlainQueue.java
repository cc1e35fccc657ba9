package rigmorrow.benchmarks.plain;

import java.util.ArrayList;
import java.util.List;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.variable.PlanningListVariable;

/** A rig with its jobs in order; the queue after the last rig holds what is left out. */
@PlanningEntity
public class PlainQueue {
  @PlanningListVariable(valueRangeProviderRefs = "jobs")
  private List<PlainJob> jobs = new ArrayList<>();

  /** For the planning library. */
  public PlainQueue() {}

  PlainQueue(List<PlainJob> jobs) {
    this.jobs = new ArrayList<>(jobs);
  }

  /** Jobs in order. */
  public List<PlainJob> getJobs() {
    return jobs;
  }

  /** For the planning library. */
  public void setJobs(List<PlainJob> jobs) {
    this.jobs = jobs;
  }
}
