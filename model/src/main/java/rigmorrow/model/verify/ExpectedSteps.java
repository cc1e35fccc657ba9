package rigmorrow.model.verify;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.PlateRing;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.setup.SetupAttribute;
import rigmorrow.model.work.JobWork;

/** The steps that a job needs before it, read straight from the floor's tables. */
final class ExpectedSteps {
  private static final List<Boolean> NAMED_FIRST = List.of(true, false);

  /** Keeps a rounding error in a product from becoming a second. */
  private static final double ROUNDING_SECONDS = 1e-9;

  private final Floor floor;
  private final KitPlaces places;

  ExpectedSteps(Floor floor, KitPlaces places) {
    this.floor = floor;
    this.places = places;
  }

  /**
   * What steps come to, added up apart from the timeline's own sum.
   *
   * @param attendedSeconds until the last hands-on second
   * @param tailSeconds from then until the last step has run out by itself
   * @param people how many it takes
   */
  record Sum(int attendedSeconds, int tailSeconds, int people) {}

  /**
   * Adds steps up.
   *
   * @param shared true when two people share them: each step begins as soon as it has its hands,
   *     the first person before the second
   */
  static Sum sum(List<ChangeoverStep> steps, boolean shared) {
    int hands = shared && steps.size() > 1 ? 2 : 1;
    List<Integer> freeAt = new ArrayList<>(Collections.nCopies(hands, 0));
    int runsOut = 0;
    int people = hands;
    for (ChangeoverStep step : steps) {
      boolean all = step.people() >= hands;
      int begin = all ? Collections.max(freeAt) : Collections.min(freeAt);
      int end = begin + step.attendedSeconds();
      if (all) {
        Collections.fill(freeAt, end);
      } else {
        freeAt.set(freeAt.indexOf(begin), end);
      }
      runsOut =
          Math.max(runsOut, step.unattendedSeconds() > 0 ? end + step.unattendedSeconds() : 0);
      people = Math.max(people, step.people());
    }
    int attended = Collections.max(freeAt);
    return new Sum(attended, Math.max(0, runsOut - attended), people);
  }

  static ChangeoverStep ringService(PlateRing ring) {
    return new ChangeoverStep("ring service", ring.serviceSeconds(), 0, 1, ring.skills());
  }

  /** A step for each kit the job needs whose unit stands elsewhere. */
  List<ChangeoverStep> kitMoves(PlannedRun run, JobWork work) {
    List<ChangeoverStep> moves = new ArrayList<>();
    for (Kit kit : floor.kits()) {
      for (KitUse use : run.planned().kit()) {
        String place = places.before(run, use.unit());
        boolean needed = work.kits().contains(kit.id()) && use.kit().equals(kit.id());
        if (needed && place != null && !place.equals(run.rigId())) {
          int seconds = floor.fetchSeconds(place, run.rigId()) + kit.alignSeconds();
          moves.add(
              new ChangeoverStep(
                  use.unit() + " from " + place, seconds, 0, kit.people(), kit.skills()));
        }
      }
    }
    return moves;
  }

  /**
   * A step for each attribute whose value changes.
   *
   * @param state the rig's values by attribute before the job
   * @param missing gets a sentence for each change that no line of the tables covers
   */
  List<ChangeoverStep> setupSteps(
      Rig rig, Map<String, String> state, JobWork work, List<String> missing) {
    List<ChangeoverStep> steps = new ArrayList<>();
    for (SetupAttribute attribute : floor.attributes()) {
      String to = work.request().value(attribute.id());
      String from = state.getOrDefault(attribute.id(), ChangeoverRule.ANY);
      if (to == null || to.equals(from)) {
        continue;
      }
      String change = attribute.id() + " from " + from + " to " + to;
      Optional<ChangeoverRule> line = line(rig.id(), attribute.id(), from, to);
      if (line.isEmpty()) {
        missing.add("no changeover line for " + change + " on " + rig.id());
        continue;
      }
      ChangeoverRule rule = line.get();
      double scaled = rule.attendedSeconds() * rig.changeoverFactor();
      steps.add(
          new ChangeoverStep(
              change,
              (int) Math.ceil(scaled - ROUNDING_SECONDS),
              rule.unattendedSeconds(),
              rule.people(),
              rule.skills()));
    }
    return steps;
  }

  /** Named rigs count before a named target, that before a named origin, then the first line. */
  private Optional<ChangeoverRule> line(String rig, String attribute, String from, String to) {
    for (boolean rigNamed : NAMED_FIRST) {
      for (boolean toNamed : NAMED_FIRST) {
        for (boolean fromNamed : NAMED_FIRST) {
          for (ChangeoverRule rule : floor.changeovers()) {
            if (rule.attribute().equals(attribute)
                && (rigNamed ? rule.rigs().contains(rig) : rule.rigs().isEmpty())
                && rule.to().equals(toNamed ? to : ChangeoverRule.ANY)
                && rule.from().equals(fromNamed ? from : ChangeoverRule.ANY)) {
              return Optional.of(rule);
            }
          }
        }
      }
    }
    return Optional.empty();
  }
}
