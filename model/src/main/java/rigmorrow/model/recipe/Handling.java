package rigmorrow.model.recipe;

import java.util.Set;
import rigmorrow.model.check.Require;

/**
 * Hands-on times and skills of what the crew does with an item besides changeovers.
 *
 * @param loadSeconds to bring and place an item
 * @param alignSeconds to align it when its height is known: the arm drives there by itself
 * @param measureByHandSeconds more when the height must be measured by hand
 * @param hangSeconds more to hang an item on strings
 * @param powerSeconds more to connect power
 * @param holderSeconds more to fix an item in a holder
 * @param unloadSeconds to take an item off
 * @param unhangSeconds more to take down what hangs
 * @param unpowerSeconds more to disconnect power
 * @param loadSkills for every load and unload
 * @param hangSkills for what hangs
 * @param powerSkills for what is powered
 */
public record Handling(
    int loadSeconds,
    int alignSeconds,
    int measureByHandSeconds,
    int hangSeconds,
    int powerSeconds,
    int holderSeconds,
    int unloadSeconds,
    int unhangSeconds,
    int unpowerSeconds,
    Set<String> loadSkills,
    Set<String> hangSkills,
    Set<String> powerSkills) {
  public Handling {
    Require.atLeast("handling.loadSeconds", loadSeconds, 0);
    Require.atLeast("handling.alignSeconds", alignSeconds, 0);
    Require.atLeast("handling.measureByHandSeconds", measureByHandSeconds, 0);
    Require.atLeast("handling.hangSeconds", hangSeconds, 0);
    Require.atLeast("handling.powerSeconds", powerSeconds, 0);
    Require.atLeast("handling.holderSeconds", holderSeconds, 0);
    Require.atLeast("handling.unloadSeconds", unloadSeconds, 0);
    Require.atLeast("handling.unhangSeconds", unhangSeconds, 0);
    Require.atLeast("handling.unpowerSeconds", unpowerSeconds, 0);
    loadSkills = Set.copyOf(loadSkills);
    hangSkills = Set.copyOf(hangSkills);
    powerSkills = Set.copyOf(powerSkills);
  }
}
