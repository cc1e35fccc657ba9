package rigmorrow.model.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import rigmorrow.model.recipe.Handling;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.Item;

/** Hands-on time and people for putting an item on a rig and taking it off. */
final class HandlingModel {
  private final Handling handling;
  private final Recipe recipe;
  private final Item item;
  private final int liftPeople;

  /**
   * @param liftPeople people the lifting check asks for, 1 or 2
   */
  HandlingModel(Handling handling, Recipe recipe, Item item, int liftPeople) {
    this.handling = handling;
    this.recipe = recipe;
    this.item = item;
    this.liftPeople = liftPeople;
  }

  /** People for loading and unloading: a holder is one more hand, but it lifts nothing. */
  int people() {
    return Math.max(item.peopleToPlace(), liftPeople);
  }

  List<TimeTerm> loadTerms() {
    List<TimeTerm> terms = new ArrayList<>();
    add(terms, "load", "bring and place", handling.loadSeconds());
    add(terms, "load", "align", handling.alignSeconds());
    if (item.heightSource() == HeightSource.HAND) {
      add(terms, "load", "measure the height by hand", handling.measureByHandSeconds());
    }
    if (item.holder()) {
      add(terms, "load", "fix in the holder", handling.holderSeconds());
    }
    if (item.hanging() != null) {
      add(terms, "load", "hang on strings", handling.hangSeconds());
    }
    if (item.power() != null) {
      add(terms, "load", "connect power", handling.powerSeconds());
    }
    return terms;
  }

  List<TimeTerm> unloadTerms() {
    List<TimeTerm> terms = new ArrayList<>();
    if (item.power() != null) {
      add(terms, "unload", "disconnect power", handling.unpowerSeconds());
    }
    if (item.hanging() != null) {
      add(terms, "unload", "take down", handling.unhangSeconds());
    }
    add(terms, "unload", "take off", handling.unloadSeconds());
    return terms;
  }

  Set<String> loadSkills() {
    Set<String> skills = new TreeSet<>(unloadSkills());
    skills.addAll(recipe.skills());
    return skills;
  }

  Set<String> unloadSkills() {
    Set<String> skills = new TreeSet<>(handling.loadSkills());
    if (item.hanging() != null) {
      skills.addAll(handling.hangSkills());
    }
    if (item.power() != null) {
      skills.addAll(handling.powerSkills());
    }
    return skills;
  }

  private static void add(List<TimeTerm> terms, String part, String label, int seconds) {
    if (seconds > 0) {
      terms.add(new TimeTerm(part, label, seconds, "floor file", List.of()));
    }
  }
}
