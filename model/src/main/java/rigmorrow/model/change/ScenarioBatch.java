package rigmorrow.model.change;

import java.util.List;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.shot.Batch;

/**
 * A batch with the changes of a scenario.
 *
 * @param batch to plan
 * @param regularCrew the crew with the hours that are paid as regular time; who works outside of
 *     them works overtime. Everybody of the batch is in it.
 * @param problems changes that could not be made and are left out; none for a batch to use
 */
public record ScenarioBatch(Batch batch, List<Operator> regularCrew, List<ChangeProblem> problems) {
  public ScenarioBatch {
    regularCrew = List.copyOf(regularCrew);
    problems = List.copyOf(problems);
  }
}
