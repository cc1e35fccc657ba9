package rigmorrow.model.scenario;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.check.Require;
import rigmorrow.model.money.Investment;

/**
 * A floor with named changes, to be compared over batches.
 *
 * @param name short, unique in its study; {@link #BASE} is the floor as it is
 * @param title what a reader is told
 * @param changes in the order they are made; none for the floor as it is
 * @param purchase what has to be bought for it; null for nothing
 */
public record Scenario(
    String name, String title, List<ScenarioChange> changes, @Nullable Investment purchase) {
  /** Name of the floor as it is. */
  public static final String BASE = "as-it-is";

  /** Name of the floor as it is, planned once more with other seeds. */
  public static final String AGAIN = "as-it-is-again";

  public Scenario {
    Require.text("scenario.name", name);
    Require.text("scenario.title", title);
    changes = List.copyOf(changes);
  }

  /** True for names that no scenario of anybody's own may have, besides {@link #BASE}. */
  public static boolean reserved(String name) {
    return name.equals(AGAIN) || name.startsWith(SmallChanges.PREFIX);
  }

  /** The floor as it is. */
  public static Scenario base() {
    return new Scenario(BASE, "The floor as it is", List.of(), null);
  }

  /**
   * True where the demand is another too, so that its costs are not to be held against the base.
   */
  public boolean changesDemand() {
    return changes.stream().anyMatch(DemandChange.class::isInstance);
  }

  /** True where something has to be bought and nobody said for how much. */
  public boolean lacksPrice() {
    return purchase == null
        && changes.stream()
            .anyMatch(
                change ->
                    change instanceof FloorChange.RigLike
                        || change instanceof FloorChange.NewRig
                        || change instanceof FloorChange.MoreUnits);
  }
}
