package rigmorrow.app.runsheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.app.runsheet.text.Names;
import rigmorrow.app.runsheet.text.TimeText;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.KitUnit;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.time.Span;
import rigmorrow.model.work.TakeOff;

/**
 * Which piece of kit is on which rig from when to when. A piece stays on a rig until another rig
 * needs it, so that jobs run under it that never asked for it, and somebody from another rig comes
 * to take it off: both must be known where it hangs.
 */
final class KitVisits {
  private final Names names;
  private final TimeText times;
  private final List<Visit> visits = new ArrayList<>();

  /**
   * A piece on a rig.
   *
   * @param from second at which somebody begins to put it up; 0 where it is there from the start
   * @param leaving when it is taken off; null when it stays
   * @param people who take it off
   * @param to rig that it is taken to; empty when it stays
   */
  private record Visit(
      Kit kit, String unit, String rig, int from, Span leaving, List<String> people, String to) {
    int until() {
      return to.isEmpty() ? Integer.MAX_VALUE : leaving.end();
    }
  }

  /** A move of a piece to a rig. */
  private record Fetch(TakeOff off, String rig, PlannedJob job) {
    Span span() {
      return off.span();
    }
  }

  /**
   * When a piece is taken off a rig.
   *
   * @param span how long that rig stands still for it
   * @param text by whom and where to, and what that means here
   */
  record Leaving(Span span, String text) {}

  KitVisits(Floor floor, Plan plan, Names names, TimeText times) {
    this.names = names;
    this.times = times;
    Map<String, List<Fetch>> fetches = new HashMap<>();
    for (RigPlan rig : plan.rigs()) {
      for (PlannedJob job : rig.jobs()) {
        for (TakeOff off : TakeOff.of(floor, rig.rig(), job)) {
          fetches
              .computeIfAbsent(off.use().unit(), unit -> new ArrayList<>())
              .add(new Fetch(off, rig.rig(), job));
        }
      }
    }
    List<String> rigs = floor.rigs().stream().map(rig -> rig.id()).toList();
    for (Kit kit : floor.kits()) {
      for (KitUnit unit : kit.units()) {
        List<Fetch> moves = fetches.getOrDefault(unit.id(), List.of());
        follow(kit, unit, moves, rigs);
      }
    }
  }

  private void follow(Kit kit, KitUnit unit, List<Fetch> moves, List<String> rigs) {
    List<Fetch> inOrder =
        moves.stream().sorted(Comparator.comparingInt(move -> move.span().start())).toList();
    String at = unit.place();
    int from = 0;
    for (Fetch move : inOrder) {
      if (rigs.contains(at)) {
        Attended changeover = move.job().changeover();
        List<String> people = changeover == null ? List.of() : changeover.operators();
        visits.add(new Visit(kit, unit.id(), at, from, move.span(), people, move.rig()));
      }
      at = move.rig();
      from = move.span().start();
    }
    if (rigs.contains(at)) {
      visits.add(new Visit(kit, unit.id(), at, from, new Span(0, 0), List.of(), ""));
    }
  }

  /**
   * What to mind with a job because of kit: what hangs there is in the way, or is taken off while
   * the job runs, which only a plan that breaks a rule asks for; and what the job fetches is taken
   * off another rig.
   */
  List<String> cautions(String rig, PlannedJob job) {
    List<String> cautions = new ArrayList<>();
    for (Visit visit : visits) {
      boolean uses = job.kit().stream().anyMatch(use -> use.unit().equals(visit.unit()));
      boolean there =
          visit.rig().equals(rig)
              && visit.from() < job.whole().end()
              && visit.until() > job.whole().start();
      if (!there) {
        continue;
      }
      String caution = visit.kit().caution();
      if (!uses && caution != null) {
        cautions.add(visit.kit().label() + " is still here. " + caution);
      }
      if (!visit.to().isEmpty() && visit.leaving().overlaps(job.whole())) {
        cautions.add(times.span(visit.leaving()) + ": " + text(visit) + ".");
      }
    }
    for (Visit visit : visits) {
      if (visit.to().equals(rig) && visit.leaving().start() == job.whole().start()) {
        cautions.add(
            ("%s: %s (%s) comes off %s, which is at no job then. Before anybody reaches"
                    + " in, make sure that it stands still and that nobody can start it, as local"
                    + " rules say.")
                .formatted(
                    times.span(visit.leaving()),
                    visit.kit().label(),
                    visit.unit(),
                    names.place(visit.rig())));
      }
    }
    return cautions;
  }

  /** When kit is taken off a rig, in order of time. */
  List<Leaving> leaving(String rig) {
    return visits.stream()
        .filter(visit -> visit.rig().equals(rig) && !visit.to().isEmpty())
        .map(visit -> new Leaving(visit.leaving(), text(visit)))
        .sorted(Comparator.comparingInt(leaving -> leaving.span().start()))
        .toList();
  }

  private String text(Visit visit) {
    String who = visit.people().isEmpty() ? "somebody" : names.people(visit.people());
    return ("%s (%s) is taken from here to %s by %s: they make sure first that this rig stands still"
            + " and nobody can start it; nothing turns or moves here until it is off")
        .formatted(visit.kit().label(), visit.unit(), names.place(visit.to()), who);
  }
}
