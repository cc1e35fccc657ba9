package rigmorrow.model.recipe;

import org.jspecify.annotations.Nullable;
import rigmorrow.model.check.Require;
import rigmorrow.model.setup.Setup;

/**
 * What an item adds to the setup its recipe asks for: flags beside glossy things, a suspension for
 * what hangs, the socket for what is powered.
 *
 * @param finish holds for items of this finish; null for any
 * @param hung holds for items that hang (true) or stand (false); null for any
 * @param powered holds for items that are powered (true) or not (false); null for any
 * @param set the values to set
 */
public record ItemSetupRule(
    @Nullable String finish, @Nullable Boolean hung, @Nullable Boolean powered, Setup set) {
  public ItemSetupRule {
    Require.that(
        finish != null || hung != null || powered != null,
        "itemSetups",
        "without a condition",
        "finish, hung or powered");
  }

  /** True when the rule holds for such an item. */
  public boolean applies(@Nullable String itemFinish, boolean itemHung, boolean itemPowered) {
    return (finish == null || finish.equals(itemFinish))
        && (hung == null || hung == itemHung)
        && (powered == null || powered == itemPowered);
  }
}
