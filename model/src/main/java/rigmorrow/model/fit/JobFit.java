package rigmorrow.model.fit;

import java.util.List;
import java.util.Optional;

/**
 * Which rigs can take one job.
 *
 * @param job id of the job
 * @param unmeasured fields that must be measured first; then no rig was asked
 * @param estimated true when the answer rests on the planner's estimate
 * @param rigs answers in floor order; empty when the job needs measuring
 */
public record JobFit(String job, List<String> unmeasured, boolean estimated, List<RigFit> rigs) {
  public JobFit {
    unmeasured = List.copyOf(unmeasured);
    rigs = List.copyOf(rigs);
  }

  /** True when at least one rig can take the job. */
  public boolean fitsSomewhere() {
    return rigs.stream().anyMatch(RigFit::fits);
  }

  /** True when size or mass is missing. */
  public boolean needsMeasuring() {
    return !unmeasured.isEmpty();
  }

  /** The rig that comes nearest, for a job that fits nowhere. */
  public Optional<RigFit> nearestMiss() {
    return fitsSomewhere() ? Optional.empty() : rigs.stream().min(RigFit.NEAREST);
  }

  /** The answer of one rig, if it was asked. */
  public Optional<RigFit> on(String rig) {
    return rigs.stream().filter(fit -> fit.rig().equals(rig)).findFirst();
  }
}
