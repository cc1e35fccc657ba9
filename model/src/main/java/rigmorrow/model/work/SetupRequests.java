package rigmorrow.model.work;

import rigmorrow.model.floor.Floor;
import rigmorrow.model.recipe.ItemSetupRule;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.ShotJob;

/**
 * What setup a job asks for: its recipe's, what its item adds, and its own, the later the stronger.
 */
public final class SetupRequests {
  private SetupRequests() {}

  /** The values that must be set for this job; what it does not name may stay as it is. */
  public static Setup of(Floor floor, ShotJob job) {
    Item item = job.item();
    Setup request = floor.recipe(job.recipe()).map(Recipe::setup).orElse(Setup.ANY);
    for (ItemSetupRule rule : floor.itemSetups()) {
      if (rule.applies(item.finish(), item.hanging() != null, item.power() != null)) {
        request = request.after(rule.set());
      }
    }
    return request.after(job.setup());
  }
}
