package rigmorrow.model.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.PlateRing;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.setup.SetupAttribute;

/**
 * Which steps lead from one setup to the next on a rig, and what bringing kit and servicing add.
 */
public final class ChangeoverModel {
  private static final String EVERY_RIG = "";

  private final Floor floor;
  private final Map<Change, ChangeoverRule> rules = new HashMap<>();
  private final Map<Change, ChangeoverStep> known = new ConcurrentHashMap<>();

  /** What a line of the tables is looked up by. */
  private record Change(String rig, String attribute, String from, String to) {}

  /**
   * @param floor whose tables to read
   */
  public ChangeoverModel(Floor floor) {
    this.floor = floor;
    for (ChangeoverRule rule : floor.changeovers()) {
      for (String rig : rule.rigs().isEmpty() ? Set.of(EVERY_RIG) : rule.rigs()) {
        // Of equally specific lines the first in the file counts.
        rules.putIfAbsent(new Change(rig, rule.attribute(), rule.from(), rule.to()), rule);
      }
    }
  }

  /** The line of the tables that applies to one change, if any does; the most specific one. */
  public Optional<ChangeoverRule> rule(Rig rig, String attribute, String from, String to) {
    for (String onRig : List.of(rig.id(), EVERY_RIG)) {
      for (String target : List.of(to, ChangeoverRule.ANY)) {
        for (String origin : List.of(from, ChangeoverRule.ANY)) {
          ChangeoverRule rule = rules.get(new Change(onRig, attribute, origin, target));
          if (rule != null) {
            return Optional.of(rule);
          }
        }
      }
    }
    return Optional.empty();
  }

  /**
   * The steps, in the floor's attribute order, for every requested value that is not set yet.
   *
   * @throws IllegalArgumentException when no line of the tables applies to a change
   */
  public List<ChangeoverStep> steps(Rig rig, Setup from, Setup request) {
    List<ChangeoverStep> steps = new ArrayList<>();
    for (SetupAttribute attribute : floor.attributes()) {
      String to = request.value(attribute.id());
      String current = from.value(attribute.id());
      if (to == null || to.equals(current)) {
        continue;
      }
      Change change =
          new Change(rig.id(), attribute.id(), current == null ? ChangeoverRule.ANY : current, to);
      // Decoders meet the same few changes in very many setups.
      steps.add(known.computeIfAbsent(change, first -> step(rig, attribute, first)));
    }
    return steps;
  }

  /** The step that brings kit to a rig and aligns it there. */
  public ChangeoverStep kitMove(Kit kit, String unit, String from, Rig rig) {
    int seconds = floor.fetchSeconds(from, rig.id()) + kit.alignSeconds();
    String text =
        "Fetch %s (%s) from %s, mount, align and test"
            .formatted(kit.label(), unit, floor.placeName(from));
    return new ChangeoverStep(text, seconds, 0, kit.people(), kit.skills());
  }

  /** The step that services a worn plate ring. */
  public ChangeoverStep ringService(PlateRing ring) {
    return new ChangeoverStep("Service the plate ring", ring.serviceSeconds(), 0, 1, ring.skills());
  }

  private ChangeoverStep step(Rig rig, SetupAttribute attribute, Change change) {
    ChangeoverRule rule =
        rule(rig, attribute.id(), change.from(), change.to())
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "no changeover time for "
                            + attribute.id()
                            + " from "
                            + change.from()
                            + " to "
                            + change.to()
                            + " on "
                            + rig.id()));
    String from = attribute.nameOf(change.from());
    String to = attribute.nameOf(change.to());
    String text =
        rule.step() == null
            ? attribute.label() + ": " + from + " to " + to
            : ChangeoverRule.named(rule.step(), from, to);
    // What is taken away is as hot, live or heavy as what is put up.
    String caution = attribute.value(change.from()).map(AttributeValue::caution).orElse(null);
    if (caution != null) {
      text += ". " + caution;
    }
    int attended = (int) Math.ceil(rule.attendedSeconds() * rig.changeoverFactor() - 1e-9);
    return new ChangeoverStep(
        text, attended, rule.unattendedSeconds(), rule.people(), rule.skills());
  }
}
