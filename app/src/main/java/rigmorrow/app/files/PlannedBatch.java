package rigmorrow.app.files;

import java.util.List;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.verify.PlanChecker;

/**
 * A plan with what it was made of.
 *
 * @param batch floor and shot list
 * @param plan the plan
 * @param planFile where it was read from
 */
public record PlannedBatch(Batch batch, Plan plan, String planFile) {

  /**
   * Every hard rule that the plan breaks.
   *
   * @throws RefusedException when the plan is of another floor or day
   */
  public List<Breach> breaches() {
    try {
      return PlanChecker.check(batch, plan);
    } catch (IllegalArgumentException e) {
      throw another(e);
    }
  }

  /** The plan does not go with the floor or the shot list. */
  public RefusedException another(IllegalArgumentException cause) {
    String accepted = "a plan of this floor and this shot list";
    return new RefusedException(
        planFile + ": " + cause.getMessage() + "; accepted: " + accepted,
        List.of(new InputProblem(planFile, "file", "", "" + cause.getMessage(), accepted)));
  }
}
