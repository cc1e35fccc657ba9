package rigmorrow.benchmarks.peer.exact;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rigmorrow.model.setup.Setup;

/**
 * Follows setup attributes through jobs that leave them as they are. Such a job keeps the value it
 * finds; the next job that asks for another pays for the change from it.
 */
final class KeptValues {
  final List<Extra> extras = new ArrayList<>();

  private final DayVars day;
  private final CpModel model;
  private final RigRoutes routes;
  private final Map<Kept, Literal> kept = new HashMap<>();
  private final Map<Change, Extra> changes = new HashMap<>();

  /** A job that keeps an attribute at a value. */
  private record Kept(int job, String attribute, String value) {}

  /** A job that changes an attribute from a value that was kept for it. */
  private record Change(int job, int rig, String attribute, String from) {}

  KeptValues(DayVars day, RigRoutes routes) {
    this.day = day;
    this.model = day.model;
    this.routes = routes;
    List<Map<Integer, List<String>>> left = new ArrayList<>();
    for (int rig = 0; rig < day.rigs; rig++) {
      Map<Integer, List<String>> onRig = new HashMap<>();
      for (int job : day.fitting.get(rig)) {
        onRig.put(job, routes.costs.get(rig).left(job));
      }
      onRig.put(SetupCosts.INITIAL, List.of());
      left.add(onRig);
    }
    for (Arc arc : routes.arcs) {
      Map<Integer, List<String>> onRig = left.get(arc.rig());
      keep(arc, onRig.getOrDefault(arc.to(), List.of()), onRig.getOrDefault(arc.from(), List.of()));
      change(arc, onRig.getOrDefault(arc.from(), List.of()));
    }
  }

  /** What the later job leaves as it is has the value that the earlier one ends with. */
  private void keep(Arc arc, List<String> leftByLater, List<String> leftByEarlier) {
    SetupCosts costs = routes.costs.get(arc.rig());
    for (String attribute : leftByLater) {
      if (leftByEarlier.contains(attribute)) {
        for (String value : costs.values(attribute)) {
          model
              .addImplication(kept(arc.from(), attribute, value), kept(arc.to(), attribute, value))
              .onlyEnforceIf(arc.taken());
        }
      } else {
        String value = costs.request(arc.from()).value(attribute);
        if (value != null) {
          model.addImplication(arc.taken(), kept(arc.to(), attribute, value));
        }
      }
    }
  }

  private void change(Arc arc, List<String> leftByEarlier) {
    SetupCosts costs = routes.costs.get(arc.rig());
    for (String attribute : leftByEarlier) {
      String target = costs.request(arc.to()).value(attribute);
      if (target != null) {
        for (String value : costs.values(attribute)) {
          if (!value.equals(target)) {
            model
                .addImplication(
                    kept(arc.from(), attribute, value), changed(arc, attribute, value, target))
                .onlyEnforceIf(arc.taken());
          }
        }
      }
    }
  }

  private Literal kept(int job, String attribute, String value) {
    return kept.computeIfAbsent(
        new Kept(job, attribute, value), key -> model.newBoolVar("kept" + job + attribute + value));
  }

  private Literal changed(Arc arc, String attribute, String from, String to) {
    return changes
        .computeIfAbsent(
            new Change(arc.to(), arc.rig(), attribute, from),
            key -> {
              SetupCosts.Cost cost = routes.costs.get(arc.rig()).single(attribute, from, to);
              Literal done = model.newBoolVar("change" + arc.to() + attribute + from);
              Extra extra =
                  new Extra(
                      arc.to(),
                      arc.rig(),
                      done,
                      cost.seconds(),
                      cost.warmSeconds(),
                      Math.max(1, cost.people()),
                      cost.lead(),
                      false);
              extras.add(extra);
              return extra;
            })
        .done();
  }

  /** Hints at the values that are kept in a plan; tells which extras are done in it. */
  Set<Literal> hint(KnownPlan plan) {
    Set<Literal> done = new HashSet<>();
    Map<Kept, Boolean> keptInPlan = new HashMap<>();
    for (int rig = 0; rig < day.rigs; rig++) {
      Setup state = day.facts.rig(rig).initialSetup();
      for (int job : plan.byRig.get(rig)) {
        Setup asked = routes.costs.get(rig).request(job);
        for (Map.Entry<String, String> one : state.values().entrySet()) {
          if (asked.value(one.getKey()) == null) {
            keptInPlan.put(new Kept(job, one.getKey(), one.getValue()), true);
          }
          Extra extra = changes.get(new Change(job, rig, one.getKey(), one.getValue()));
          boolean open =
              plan.before[job] != KnownPlan.NONE
                  && routes.costs.get(rig).request(plan.before[job]).value(one.getKey()) == null;
          if (extra != null && open) {
            done.add(extra.done());
          }
        }
        state = state.after(asked);
      }
    }
    kept.forEach((key, literal) -> model.addHint(literal, keptInPlan.containsKey(key)));
    return done;
  }
}
