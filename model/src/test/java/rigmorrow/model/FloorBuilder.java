package rigmorrow.model;

import java.time.ZoneId;
import java.util.List;
import rigmorrow.model.floor.FetchTime;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.floor.Weights;
import rigmorrow.model.recipe.Handling;
import rigmorrow.model.recipe.ItemSetupRule;
import rigmorrow.model.recipe.Physics;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.SetupAttribute;

/** Builds floors for tests; each call replaces one part. */
public final class FloorBuilder {
  private ZoneId zone = FloorFixtures.COPENHAGEN;
  private List<Rig> rigs = List.of();
  private List<Kit> kits = List.of();
  private List<FetchTime> fetches = List.of();
  private List<Operator> crew = List.of();
  private List<SetupAttribute> attributes = List.of();
  private List<ChangeoverRule> changeovers = List.of();
  private List<Recipe> recipes = List.of();
  private List<ItemSetupRule> itemSetups = List.of();
  private Handling handling = FloorFixtures.handling();
  private Physics physics = FloorFixtures.physics();
  private Weights weights = Weights.DEFAULT;

  public FloorBuilder zone(ZoneId other) {
    zone = other;
    return this;
  }

  public FloorBuilder rigs(Rig... others) {
    rigs = List.of(others);
    return this;
  }

  public FloorBuilder kits(Kit... others) {
    kits = List.of(others);
    return this;
  }

  public FloorBuilder fetches(FetchTime... others) {
    fetches = List.of(others);
    return this;
  }

  public FloorBuilder crew(Operator... others) {
    crew = List.of(others);
    return this;
  }

  public FloorBuilder attributes(SetupAttribute... others) {
    attributes = List.of(others);
    return this;
  }

  public FloorBuilder changeovers(ChangeoverRule... others) {
    changeovers = List.of(others);
    return this;
  }

  public FloorBuilder recipes(Recipe... others) {
    recipes = List.of(others);
    return this;
  }

  public FloorBuilder itemSetups(ItemSetupRule... others) {
    itemSetups = List.of(others);
    return this;
  }

  public FloorBuilder handling(Handling other) {
    handling = other;
    return this;
  }

  public FloorBuilder physics(Physics other) {
    physics = other;
    return this;
  }

  public FloorBuilder weights(Weights other) {
    weights = other;
    return this;
  }

  public Floor build() {
    return new Floor(
        "Small studio",
        zone,
        rigs,
        kits,
        fetches,
        crew,
        attributes,
        changeovers,
        recipes,
        itemSetups,
        handling,
        physics,
        weights,
        FloorFixtures.costs());
  }
}
