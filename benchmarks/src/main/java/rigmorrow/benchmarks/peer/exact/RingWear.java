package rigmorrow.benchmarks.peer.exact;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import rigmorrow.model.floor.PlateRing;

/**
 * Turns of each plate ring since its service, followed through the sequence; a job that would turn
 * it too often has it serviced first. Rings that last through every plan are left alone.
 */
final class RingWear {
  final List<Extra> extras = new ArrayList<>();

  private final DayVars day;
  private final CpModel model;
  private final RigRoutes routes;
  private final Map<List<Integer>, IntVar> worn = new HashMap<>();
  private final Map<List<Integer>, Extra> services = new HashMap<>();

  RingWear(DayVars day, RigRoutes routes) {
    this.day = day;
    this.model = day.model;
    this.routes = routes;
    for (int rig = 0; rig < day.rigs; rig++) {
      PlateRing ring = day.facts.rig(rig).ring();
      if (ring != null && mayWearOut(rig, ring)) {
        follow(rig, ring);
      }
    }
  }

  private boolean mayWearOut(int rig, PlateRing ring) {
    long turns = ring.turnsSinceService();
    for (int job : day.fitting.get(rig)) {
      turns += turns(job, rig);
    }
    return turns > ring.serviceEveryTurns();
  }

  private int turns(int job, int rig) {
    return day.facts.work(job, rig).turns();
  }

  private void follow(int rig, PlateRing ring) {
    int limit = ring.serviceEveryTurns();
    for (int job : day.fitting.get(rig)) {
      Literal done = model.newBoolVar("service" + job + "_" + rig);
      worn.put(List.of(job, rig), model.newIntVar(Math.min(limit, turns(job, rig)), limit, "worn"));
      int seconds = ring.serviceSeconds();
      int lead = day.facts.skilled(ring.skills());
      Extra extra = new Extra(job, rig, done, seconds, seconds, 1, lead, true);
      services.put(List.of(job, rig), extra);
      extras.add(extra);
    }
    for (Arc arc : routes.arcs) {
      if (arc.rig() == rig) {
        wear(arc, ring);
      }
    }
  }

  private void wear(Arc arc, PlateRing ring) {
    int more = turns(arc.to(), arc.rig());
    IntVar after = Objects.requireNonNull(worn.get(List.of(arc.to(), arc.rig())));
    Literal done = Objects.requireNonNull(services.get(List.of(arc.to(), arc.rig()))).done();
    IntVar from = worn.get(List.of(arc.from(), arc.rig()));
    if (from != null) {
      model
          .addGreaterOrEqual(after, LinearExpr.affine(from, 1, more))
          .onlyEnforceIf(new Literal[] {arc.taken(), done.not()});
    } else if (ring.turnsSinceService() + more > ring.serviceEveryTurns()
        && ring.turnsSinceService() > 0) {
      model.addImplication(arc.taken(), done);
    } else {
      model
          .addGreaterOrEqual(
              after, Math.min(ring.serviceEveryTurns(), ring.turnsSinceService() + more))
          .onlyEnforceIf(new Literal[] {arc.taken(), done.not()});
    }
  }

  /** Hints at the wear of each ring; tells which services are done in a plan. */
  Set<Literal> hint(KnownPlan plan) {
    Set<Literal> done = new HashSet<>();
    worn.forEach(
        (key, turns) -> {
          PlateRing ring = day.facts.rig(key.get(1)).ring();
          if (ring != null && plan.rig[key.get(0)] != key.get(1)) {
            model.addHint(turns, ring.serviceEveryTurns());
          }
        });
    for (int rig = 0; rig < day.rigs; rig++) {
      PlateRing ring = day.facts.rig(rig).ring();
      if (ring != null) {
        int turns = ring.turnsSinceService();
        for (int job : plan.byRig.get(rig)) {
          int more = turns(job, rig);
          boolean service = turns + more > ring.serviceEveryTurns() && turns > 0;
          turns = (service ? 0 : turns) + more;
          IntVar known = worn.get(List.of(job, rig));
          if (known != null) {
            model.addHint(known, turns);
          }
          Extra extra = services.get(List.of(job, rig));
          if (service && extra != null) {
            done.add(extra.done());
          }
        }
      }
    }
    return done;
  }
}
