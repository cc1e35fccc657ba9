package rigmorrow.benchmarks.peer.exact;

import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.KitUnit;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.PlannedJob;

/**
 * The way of each unit of kit from job to job: one circuit through all units and jobs of a kit, in
 * which what lies behind a unit is what it does. A unit that comes from elsewhere is fetched and
 * aligned.
 */
final class KitRoutes {
  final List<Extra> extras = new ArrayList<>();

  private final DayVars day;
  private final CpModel model;
  private final List<Step> steps = new ArrayList<>();
  private final Map<Use, Literal> uses = new HashMap<>();
  private final Map<Move, Extra> moves = new HashMap<>();

  /** From a unit's shelf or a job ({@code from}) to a job, or back to a unit. */
  private record Step(Kit kit, @Nullable KitUnit unit, int from, int to, Literal taken) {}

  /** A job that has a kit. */
  private record Use(Kit kit, int job) {}

  /** A job that has a kit fetched to its rig, by the seconds that takes. */
  private record Move(Kit kit, int job, int rig, int seconds) {}

  KitRoutes(DayVars day) {
    this.day = day;
    this.model = day.model;
    for (Kit kit : day.facts.floor().kits()) {
      List<Integer> users = users(kit);
      if (!users.isEmpty()) {
        circuit(kit, users);
      }
    }
  }

  private boolean needs(Kit kit, int job, int rig) {
    return day.on[job][rig] != null && day.facts.work(job, rig).kits().contains(kit.id());
  }

  private List<Integer> users(Kit kit) {
    List<Integer> users = new ArrayList<>();
    for (int job = 0; job < day.jobs; job++) {
      List<Literal> where = new ArrayList<>();
      for (int rig = 0; rig < day.rigs; rig++) {
        if (needs(kit, job, rig)) {
          where.add(here(job, rig));
        }
      }
      if (!where.isEmpty()) {
        Literal used = model.newBoolVar("use" + kit.id() + job);
        List<Literal> cases = new ArrayList<>(where);
        cases.add(used.not());
        model.addExactlyOne(cases);
        uses.put(new Use(kit, job), used);
        users.add(job);
      }
    }
    return users;
  }

  private Literal here(int job, int rig) {
    return Objects.requireNonNull(day.on[job][rig]);
  }

  private void circuit(Kit kit, List<Integer> users) {
    CircuitConstraint circuit = model.addCircuit();
    int units = kit.units().size();
    for (int unit = 0; unit < units; unit++) {
      KitUnit one = kit.units().get(unit);
      for (int other = 0; other < units; other++) {
        circuit.addArc(unit, other, step(kit, one, KnownPlan.NONE, KnownPlan.NONE));
      }
      for (int at = 0; at < users.size(); at++) {
        Literal taken = step(kit, one, KnownPlan.NONE, users.get(at));
        circuit.addArc(unit, units + at, taken);
        fetch(kit, one, users.get(at), taken);
      }
    }
    for (int at = 0; at < users.size(); at++) {
      int job = users.get(at);
      circuit.addArc(
          units + at, units + at, Objects.requireNonNull(uses.get(new Use(kit, job))).not());
      for (int unit = 0; unit < units; unit++) {
        circuit.addArc(units + at, unit, step(kit, null, job, KnownPlan.NONE));
      }
      for (int next = 0; next < users.size(); next++) {
        if (next != at) {
          Literal taken = step(kit, null, job, users.get(next));
          circuit.addArc(units + at, units + next, taken);
          model.addGreaterOrEqual(day.start[users.get(next)], day.end[job]).onlyEnforceIf(taken);
          pass(kit, job, users.get(next), taken);
        }
      }
    }
  }

  private Literal step(Kit kit, @Nullable KitUnit unit, int from, int to) {
    Literal taken = model.newBoolVar("step" + kit.id() + from + "_" + to);
    steps.add(new Step(kit, unit, from, to, taken));
    return taken;
  }

  private void fetch(Kit kit, KitUnit unit, int job, Literal taken) {
    for (int rig = 0; rig < day.rigs; rig++) {
      String to = day.facts.rig(rig).id();
      if (needs(kit, job, rig) && !unit.place().equals(to)) {
        model
            .addImplication(here(job, rig), moved(kit, job, rig, unit.place()))
            .onlyEnforceIf(taken);
      }
    }
  }

  private void pass(Kit kit, int from, int to, Literal taken) {
    for (int rig = 0; rig < day.rigs; rig++) {
      for (int other = 0; other < day.rigs; other++) {
        if (rig != other && needs(kit, from, rig) && needs(kit, to, other)) {
          model
              .addImplication(here(to, other), moved(kit, to, other, day.facts.rig(rig).id()))
              .onlyEnforceIf(new Literal[] {taken, here(from, rig)});
        }
      }
    }
  }

  private Literal moved(Kit kit, int job, int rig, String from) {
    int seconds =
        day.facts.floor().fetchSeconds(from, day.facts.rig(rig).id()) + kit.alignSeconds();
    return moves
        .computeIfAbsent(
            new Move(kit, job, rig, seconds),
            key -> {
              Literal done = model.newBoolVar("move" + kit.id() + job + "_" + rig);
              int lead = day.facts.skilled(kit.skills());
              Extra extra = new Extra(job, rig, done, seconds, seconds, kit.people(), lead, true);
              extras.add(extra);
              return extra;
            })
        .done();
  }

  /** Hints at who has each unit after whom; tells which extras are done in a plan. */
  Set<Literal> hint(KnownPlan plan) {
    Set<Literal> done = new HashSet<>();
    for (Kit kit : day.facts.floor().kits()) {
      hint(kit, plan, done);
    }
    return done;
  }

  private void hint(Kit kit, KnownPlan plan, Set<Literal> done) {
    Set<List<Object>> taken = new HashSet<>();
    for (int unit = 0; unit < kit.units().size(); unit++) {
      KitUnit one = kit.units().get(unit);
      Object last = one;
      for (int job : usersOf(kit, one, plan)) {
        taken.add(List.of(last, job));
        last = job;
        KitUse use = use(kit, Objects.requireNonNull(plan.of(job)));
        String to = day.facts.rig(plan.rig[job]).id();
        if (use != null && !use.from().equals(to)) {
          int seconds = day.facts.floor().fetchSeconds(use.from(), to) + kit.alignSeconds();
          Extra extra = moves.get(new Move(kit, job, plan.rig[job], seconds));
          if (extra != null) {
            done.add(extra.done());
          }
        }
      }
      taken.add(List.of(last, KnownPlan.NONE, kit.units().get((unit + 1) % kit.units().size())));
    }
    hintSteps(kit, taken);
    uses.forEach(
        (use, literal) -> {
          if (use.kit().equals(kit)) {
            PlannedJob planned = plan.of(use.job());
            model.addHint(literal, planned != null && use(kit, planned) != null);
          }
        });
  }

  /** The arcs back to units come in unit order, which is the order they were made in. */
  private void hintSteps(Kit kit, Set<List<Object>> taken) {
    Map<Object, Integer> back = new HashMap<>();
    for (Step step : steps) {
      if (step.kit().equals(kit)) {
        Object from = step.unit() == null ? step.from() : step.unit();
        if (step.to() != KnownPlan.NONE) {
          model.addHint(step.taken(), taken.contains(List.of(from, step.to())));
        } else {
          int unit = back.merge(from, 1, Integer::sum) - 1;
          KitUnit to = kit.units().get(unit);
          model.addHint(step.taken(), taken.contains(List.of(from, KnownPlan.NONE, to)));
        }
      }
    }
  }

  private List<Integer> usersOf(Kit kit, KitUnit unit, KnownPlan plan) {
    List<Integer> users = new ArrayList<>();
    for (int job = 0; job < day.jobs; job++) {
      PlannedJob planned = plan.of(job);
      KitUse use = planned == null ? null : use(kit, planned);
      if (use != null && use.unit().equals(unit.id())) {
        users.add(job);
      }
    }
    users.sort(
        java.util.Comparator.comparingInt(
            job -> Objects.requireNonNull(plan.of(job)).whole().start()));
    return users;
  }

  private static @Nullable KitUse use(Kit kit, PlannedJob planned) {
    return planned.kit().stream()
        .filter(use -> use.kit().equals(kit.id()))
        .findFirst()
        .orElse(null);
  }
}
