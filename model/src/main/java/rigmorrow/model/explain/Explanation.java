package rigmorrow.model.explain;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.shot.ShotJob;

/**
 * Why a plan does with a job what it does. Every figure was decoded; what no decode shows is not in
 * it.
 *
 * @param job that was asked about
 * @param status what the plan does with it
 * @param differing ids of the jobs whose times in the plan are not those the decoder gives to its
 *     orders; empty for a plan that was not edited. The explanation is of the decoded times.
 * @param rules what holds for the job
 * @param unmeasured fields that must be measured first
 * @param cost of the whole plan
 * @param times of the job; null when it is not planned
 * @param before id of the job before it on its rig; null for none
 * @param after id of the job after it on its rig; null for none
 * @param waits of its rig on its account, in order
 * @param rigs what each rig is for it, in floor order; empty when it needs measuring
 * @param changes what was supposed and what came of it; those that help first, the most helpful
 *     first. Empty for a job that is left out where there is room for it.
 */
public record Explanation(
    ShotJob job,
    Status status,
    List<String> differing,
    JobRules rules,
    List<String> unmeasured,
    Cost cost,
    @Nullable JobTimes times,
    @Nullable String before,
    @Nullable String after,
    List<Wait> waits,
    List<RigAnswer> rigs,
    List<IfThen> changes) {
  public Explanation {
    differing = List.copyOf(differing);
    unmeasured = List.copyOf(unmeasured);
    waits = List.copyOf(waits);
    rigs = List.copyOf(rigs);
    changes = List.copyOf(changes);
  }

  /** The same answer about one rig only. */
  public Explanation onlyRig(String rig) {
    List<RigAnswer> one = rigs.stream().filter(answer -> answer.rig().equals(rig)).toList();
    return new Explanation(
        job, status, differing, rules, unmeasured, cost, times, before, after, waits, one, changes);
  }

  /** What a plan does with a job. */
  public enum Status {
    /** It has a rig and times. */
    PLANNED,
    /** It is left out though a rig could take it. */
    LEFT_OUT,
    /** The planner leaves it out by hand. Its places were tried as if it were taken in. */
    HELD_BACK,
    /** No rig can take it. */
    FITS_NO_RIG,
    /** Size or mass is not known. */
    NEEDS_MEASURING
  }
}
