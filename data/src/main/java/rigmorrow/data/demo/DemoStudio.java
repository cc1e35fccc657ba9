package rigmorrow.data.demo;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Set;
import rigmorrow.model.check.Require;
import rigmorrow.model.floor.Costs;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Weights;
import rigmorrow.model.recipe.LiftGeometry;
import rigmorrow.model.recipe.Physics;

/**
 * An invented photo studio, Lindholm Hall. Its figures are plausible and its own; none of them was
 * published or measured anywhere. It works every day of the week.
 */
public final class DemoStudio {
  private DemoStudio() {}

  /** The floor of six rigs and four operators on the demo's own day. */
  public static Floor floor() {
    return floor(DemoKnobs.DATE);
  }

  /**
   * The floor of six rigs and four operators.
   *
   * @param date first day of the plan; the platform is in service until nine on it
   */
  public static Floor floor(LocalDate date) {
    return floor(date, DemoRigs.FIRST);
  }

  /**
   * A floor of a chosen size: more rigs come with more crew and kit.
   *
   * @param date first day of the plan; the platform is in service until nine on it
   * @param rigs 6 to 12; from 7 on they are copies of the first six
   */
  public static Floor floor(LocalDate date, int rigs) {
    Require.between("rigs", rigs, DemoRigs.FIRST, DemoRigs.MOST);
    return new Floor(
        "Lindholm Hall",
        ZoneId.of("Europe/Copenhagen"),
        DemoRigs.on(date, rigs),
        DemoKit.forRigs(rigs),
        DemoKit.fetches(),
        DemoCrew.first(operators(rigs)),
        DemoSetups.attributes(),
        DemoChangeovers.rules(DemoRigs.idsLike(rigs, Set.of(4))),
        DemoRecipes.all(DemoRigs.idsLike(rigs, Set.of(1, 2, 3, 5, 6))),
        DemoSetups.itemSetups(),
        DemoKnobs.handling(),
        physics(),
        Weights.DEFAULT,
        new Costs("EUR", 38, 1.5, 14, 25, 60));
  }

  /** Four for six rigs, seven for ten, nine for twelve. */
  private static int operators(int rigs) {
    return switch (rigs) {
      case 6 -> 4;
      case 7, 8 -> 5;
      case 9 -> 6;
      case 10 -> 7;
      case 11 -> 8;
      default -> 9;
    };
  }

  private static Physics physics() {
    return new Physics(
        0.35, 1.5, 5, 20, 20, 0.6, 0.1, 2, 1050, new LiftGeometry(750, 200, 20, 0.2, 1.5));
  }
}
