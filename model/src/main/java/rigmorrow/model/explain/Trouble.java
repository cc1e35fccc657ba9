package rigmorrow.model.explain;

import org.jspecify.annotations.Nullable;
import rigmorrow.model.shot.ShotJob;

/**
 * A job that is late or left out, in short.
 *
 * @param job which one
 * @param status what the plan does with it
 * @param times of the job; null when it is left out
 * @param asked false where so many jobs are in trouble that nothing was tried for this one
 * @param change for a late job the one change that takes its pictures soonest; null when none does,
 *     and for a job that is left out
 * @param best for a job that is left out the best place of all rigs; null when it fits none. For a
 *     late job, of the cheapest other places on each rig, the cheapest that makes the plan better,
 *     else the cheapest at which the job is less late and no more rules are broken; null when none
 *     is, though a dearer place on a rig might be
 * @param placesTried how many places were decoded
 */
public record Trouble(
    ShotJob job,
    Explanation.Status status,
    @Nullable JobTimes times,
    boolean asked,
    @Nullable IfThen change,
    @Nullable Move best,
    int placesTried) {}
