package rigmorrow.model.floor;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import rigmorrow.model.check.Require;
import rigmorrow.model.recipe.Handling;
import rigmorrow.model.recipe.ItemSetupRule;
import rigmorrow.model.recipe.Physics;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.SetupAttribute;

/**
 * Everything that stays from day to day. Each part checks itself; that the parts name each other
 * rightly is checked where a floor file is read.
 *
 * @param name of the studio or hall
 * @param zone time zone of every local time in the floor and the shot list
 * @param rigs at least one
 * @param kits shared equipment
 * @param fetches how long it takes to bring kit from place to place
 * @param crew at least one operator
 * @param attributes setup attributes, in the order their steps are done
 * @param changeovers the changeover tables
 * @param recipes at least one
 * @param itemSetups what items add to the setup their recipe asks for
 * @param handling hands-on times
 * @param physics figures of the capture model
 * @param weights what a plan is judged by
 * @param costs money
 */
public record Floor(
    String name,
    ZoneId zone,
    List<Rig> rigs,
    List<Kit> kits,
    List<FetchTime> fetches,
    List<Operator> crew,
    List<SetupAttribute> attributes,
    List<ChangeoverRule> changeovers,
    List<Recipe> recipes,
    List<ItemSetupRule> itemSetups,
    Handling handling,
    Physics physics,
    Weights weights,
    Costs costs) {
  public Floor {
    Require.text("floor.name", name);
    rigs = List.copyOf(rigs);
    kits = List.copyOf(kits);
    fetches = List.copyOf(fetches);
    crew = List.copyOf(crew);
    attributes = List.copyOf(attributes);
    changeovers = List.copyOf(changeovers);
    recipes = List.copyOf(recipes);
    itemSetups = List.copyOf(itemSetups);
    Require.that(!rigs.isEmpty(), "floor.rigs", "empty", "at least one rig");
    Require.that(!crew.isEmpty(), "floor.crew", "empty", "at least one operator");
    Require.that(!recipes.isEmpty(), "floor.recipes", "empty", "at least one recipe");
  }

  /** The same floor with other rigs. */
  public Floor withRigs(List<Rig> other) {
    return new Floor(
        name,
        zone,
        other,
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
        costs);
  }

  /** The same floor with another crew. */
  public Floor withCrew(List<Operator> other) {
    return new Floor(
        name,
        zone,
        rigs,
        kits,
        fetches,
        other,
        attributes,
        changeovers,
        recipes,
        itemSetups,
        handling,
        physics,
        weights,
        costs);
  }

  /** The rig with this id, if there is one. */
  public Optional<Rig> rig(String id) {
    return rigs.stream().filter(rig -> rig.id().equals(id)).findFirst();
  }

  /** What people call a place: a rig by its name with its id, a shelf as the floor file does. */
  public String placeName(String place) {
    return rig(place).map(rig -> rig.name() + " (" + rig.id() + ")").orElse(place);
  }

  /** True when the rig lets two people share a changeover and the crew has two. */
  public boolean sharesChangeovers(Rig rig) {
    return rig.twoStepsAtOnce() && crew.size() > 1;
  }

  /** The kit with this id, if there is one. */
  public Optional<Kit> kit(String id) {
    return kits.stream().filter(kit -> kit.id().equals(id)).findFirst();
  }

  /** The operator with this id, if there is one. */
  public Optional<Operator> operator(String id) {
    return crew.stream().filter(operator -> operator.id().equals(id)).findFirst();
  }

  /** The recipe with this id, if there is one. */
  public Optional<Recipe> recipe(String id) {
    return recipes.stream().filter(recipe -> recipe.id().equals(id)).findFirst();
  }

  /** The setup attribute with this id, if there is one. */
  public Optional<SetupAttribute> attribute(String id) {
    return attributes.stream().filter(attribute -> attribute.id().equals(id)).findFirst();
  }

  /** Hands-on seconds to bring kit from one place to another; 0 where no line applies. */
  public int fetchSeconds(String fromPlace, String toPlace) {
    if (fromPlace.equals(toPlace)) {
      return 0;
    }
    return fetches.stream()
        .filter(fetch -> fetch.applies(fromPlace, toPlace))
        .mapToInt(FetchTime::seconds)
        .findFirst()
        .orElse(0);
  }
}
