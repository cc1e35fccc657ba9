package rigmorrow.model.change;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rigmorrow.model.floor.FetchTime;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;

/** Rigs that come, go, or light faster, with all that names them. */
final class RigChanges {
  private static final int MOST_RIGS = 200;

  private RigChanges() {}

  static void addLike(FloorChange.RigLike change, FloorDraft draft) {
    int like = draft.rig("like", change.like());
    if (!free(change.id(), draft) || like < 0) {
      return;
    }
    draft.rigs.add(RigCopy.fresh(draft.rigs.get(like), change.id(), change.name()));
    draft.changeovers.replaceAll(
        rule -> rule.rigs().contains(change.like()) ? with(rule, change.id()) : rule);
    draft.recipes.replaceAll(recipe -> timedLike(recipe, change));
    List<FetchTime> fetches = new ArrayList<>();
    for (FetchTime fetch : draft.fetches) {
      fetches.add(fetch);
      if (fetch.to().equals(change.like())) {
        fetches.add(new FetchTime(fetch.from(), change.id(), fetch.seconds()));
      }
      if (fetch.from().equals(change.like())) {
        fetches.add(new FetchTime(change.id(), fetch.to(), fetch.seconds()));
      }
    }
    draft.fetches.clear();
    draft.fetches.addAll(fetches);
  }

  static void add(Rig rig, FloorDraft draft) {
    if (free(rig.id(), draft)) {
      draft.rigs.add(rig);
    }
  }

  private static boolean free(String id, FloorDraft draft) {
    if (draft.rigs.stream().anyMatch(rig -> rig.id().equals(id))) {
      draft.refuse("id", id, "an id that no rig has");
      return false;
    }
    if (draft.places().contains(id)) {
      draft.refuse("id", id, "an id that is not the name of a shelf");
      return false;
    }
    if (draft.rigs.size() == MOST_RIGS) {
      draft.refuse("id", id, "at most " + MOST_RIGS + " rigs");
      return false;
    }
    return true;
  }

  /** A line that names some rigs names one more. */
  private static ChangeoverRule with(ChangeoverRule rule, String rig) {
    Set<String> rigs = new HashSet<>(rule.rigs());
    rigs.add(rig);
    return ChangeoverChanges.of(rule, rigs, rule.attendedSeconds());
  }

  private static Recipe timedLike(Recipe recipe, FloorChange.RigLike change) {
    Integer seconds = recipe.measuredCaptureSeconds().get(change.like());
    if (seconds == null) {
      return recipe;
    }
    Map<String, Integer> measured = new HashMap<>(recipe.measuredCaptureSeconds());
    measured.put(change.id(), seconds);
    return timed(recipe, measured);
  }

  static void remove(String id, FloorDraft draft) {
    int index = draft.rig("rig", id);
    if (index < 0 || !canGo(id, draft)) {
      return;
    }
    draft.rigs.remove(index);
    draft.changeovers.removeIf(rule -> rule.rigs().equals(Set.of(id)));
    draft.changeovers.replaceAll(rule -> without(rule, id));
    draft.recipes.replaceAll(recipe -> timedWithout(recipe, id));
    boolean shelf = draft.places().contains(id);
    draft.fetches.removeIf(fetch -> fetch.to().equals(id) || (fetch.from().equals(id) && !shelf));
    draft.pins.removeIf(pin -> pin.rig().equals(id));
  }

  private static boolean canGo(String id, FloorDraft draft) {
    boolean can = true;
    if (draft.rigs.size() == 1) {
      draft.refuse("rig", id, "a rig that is not the only one");
      can = false;
    }
    for (Recipe recipe : draft.recipes) {
      if (recipe.rows().isEmpty()
          && recipe.stills().isEmpty()
          && recipe.measuredCaptureSeconds().keySet().equals(Set.of(id))) {
        draft.refuse("rig", id, "a rig that is not the only one with a time for " + recipe.id());
        can = false;
      }
    }
    for (Pin pin : draft.pins) {
      if (pin.rig().equals(id) && pin.state() != PinState.PLANNED) {
        draft.refuse("rig", id, "a rig on which " + pin.job() + " has not begun");
        can = false;
      }
    }
    return can;
  }

  private static ChangeoverRule without(ChangeoverRule rule, String rig) {
    if (!rule.rigs().contains(rig)) {
      return rule;
    }
    Set<String> rigs = new HashSet<>(rule.rigs());
    rigs.remove(rig);
    return ChangeoverChanges.of(rule, rigs, rule.attendedSeconds());
  }

  private static Recipe timedWithout(Recipe recipe, String rig) {
    if (!recipe.measuredCaptureSeconds().containsKey(rig)) {
      return recipe;
    }
    Map<String, Integer> measured = new HashMap<>(recipe.measuredCaptureSeconds());
    measured.remove(rig);
    return timed(recipe, measured);
  }

  private static Recipe timed(Recipe recipe, Map<String, Integer> measured) {
    return new Recipe(
        recipe.id(),
        recipe.label(),
        recipe.rows(),
        recipe.stills(),
        recipe.exposureSeconds(),
        recipe.focusBrackets(),
        recipe.lighting(),
        recipe.setup(),
        recipe.equipment(),
        recipe.skills(),
        recipe.attended(),
        recipe.backgroundMarginMm(),
        measured);
  }

  static void strobes(FloorChange.StrobeRecycle change, FloorDraft draft) {
    List<Integer> indexes = draft.rigs(change.rigs());
    if (change.rigs().isEmpty()) {
      indexes = new ArrayList<>();
      for (int i = 0; i < draft.rigs.size(); i++) {
        if (draft.rigs.get(i).camera().strobeRecycleSeconds() != null) {
          indexes.add(i);
        }
      }
      if (indexes.isEmpty()) {
        draft.refuse("rigs", "", "a floor on which some rig has strobes");
      }
    }
    for (int index : indexes) {
      Rig rig = draft.rigs.get(index);
      Double now = rig.camera().strobeRecycleSeconds();
      if (now == null) {
        draft.refuse("rigs", rig.id(), "a rig that has strobes");
        continue;
      }
      Double seconds = change.seconds();
      Double factor = change.factor();
      double then = seconds != null ? seconds : now * (factor == null ? 1 : factor);
      draft.rigs.set(index, RigCopy.strobes(rig, then));
    }
  }
}
