package rigmorrow.model.verify;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.PlateRing;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.work.JobWork;

/** Whether each changeover does what the next setup, its kit and the plate ring need. */
final class ChangeoverChecker {
  private final Floor floor;
  private final BreachLog log;

  ChangeoverChecker(Floor floor, BreachLog log) {
    this.floor = floor;
    this.log = log;
  }

  void check(List<PlannedRun> runs) {
    ExpectedSteps expected = new ExpectedSteps(floor, new KitPlaces(floor, runs));
    for (Rig rig : floor.rigs()) {
      Map<String, String> state = new HashMap<>(rig.initialSetup().values());
      PlateRing ring = rig.ring();
      int turns = ring == null ? 0 : ring.turnsSinceService();
      for (PlannedRun run : runs) {
        JobWork work = run.work();
        if (work != null && run.rigId().equals(rig.id())) {
          List<String> missing = new ArrayList<>();
          List<ChangeoverStep> kit = expected.kitMoves(run, work);
          List<ChangeoverStep> setup = expected.setupSteps(rig, state, work, missing);
          log.add(
              FloorRule.CHANGEOVER_STEPS,
              run.id(),
              missing.size(),
              "Job " + run.id() + ": " + String.join("; ", missing) + ".");
          turns = ring == null ? 0 : turnsAfter(run, ring, turns, work.turns(), kit, setup);
          if (ring == null) {
            compare(run, all(kit, List.of(), setup));
          }
          state.putAll(work.request().values());
        }
      }
    }
    runs.forEach(this::listedOrNone);
  }

  /** Compares the steps, the ring's service after the kit where it is due; the turns after it. */
  private int turnsAfter(
      PlannedRun run,
      PlateRing ring,
      int turnsBefore,
      int turns,
      List<ChangeoverStep> kit,
      List<ChangeoverStep> setup) {
    List<ChangeoverStep> others = all(kit, List.of(), setup);
    int total = turnsBefore + turns;
    // A ring that was just serviced gains nothing from a service, however long the next job turns.
    boolean due = turnsBefore > 0 && total > ring.serviceEveryTurns();
    if (!due) {
      compare(run, others);
      return total;
    }
    List<ChangeoverStep> withService = all(kit, List.of(ExpectedSteps.ringService(ring)), setup);
    if (differences(run.planned().steps(), others) == 0) {
      log.add(
          FloorRule.RING_SERVICE,
          run.rigId(),
          (long) total - ring.serviceEveryTurns(),
          "Rig "
              + run.rigId()
              + " has its ring turned "
              + total
              + " times after job "
              + run.id()
              + " at "
              + log.time(run.planned().capture().end())
              + ", serviced every "
              + ring.serviceEveryTurns()
              + " turns.");
      return total;
    }
    compare(run, withService);
    return turns;
  }

  private static List<ChangeoverStep> all(
      List<ChangeoverStep> kit, List<ChangeoverStep> service, List<ChangeoverStep> setup) {
    List<ChangeoverStep> all = new ArrayList<>(kit);
    all.addAll(service);
    all.addAll(setup);
    return all;
  }

  private void compare(PlannedRun run, List<ChangeoverStep> expected) {
    List<ChangeoverStep> actual = run.planned().steps();
    log.add(
        FloorRule.CHANGEOVER_STEPS,
        run.id(),
        differences(actual, expected),
        "Before job "
            + run.id()
            + " the steps on rig "
            + run.rigId()
            + " at "
            + log.time(run.whole().start())
            + " are "
            + words(actual)
            + " instead of "
            + words(expected)
            + ".");
  }

  private void listedOrNone(PlannedRun run) {
    boolean timed = run.planned().changeover() != null;
    int steps = run.planned().steps().size();
    log.add(
        FloorRule.CHANGEOVER_STEPS,
        run.id(),
        timed == (steps > 0) ? 0 : 1,
        "Job "
            + run.id()
            + " lists "
            + steps
            + " steps and "
            + (timed ? "a time" : "no time")
            + " for its changeover.");
  }

  /** How many places of the two lists differ in time, people or skills; texts may. */
  private static int differences(List<ChangeoverStep> actual, List<ChangeoverStep> expected) {
    int common = Math.min(actual.size(), expected.size());
    int differing = Math.max(actual.size(), expected.size()) - common;
    for (int i = 0; i < common; i++) {
      differing += figures(actual.get(i)).equals(figures(expected.get(i))) ? 0 : 1;
    }
    return differing;
  }

  private static List<Object> figures(ChangeoverStep step) {
    return List.of(step.attendedSeconds(), step.unattendedSeconds(), step.people(), step.skills());
  }

  private static List<String> words(List<ChangeoverStep> steps) {
    return steps.stream()
        .map(
            step ->
                step.text()
                    + " ("
                    + step.attendedSeconds()
                    + " s + "
                    + step.unattendedSeconds()
                    + " s, "
                    + step.people()
                    + " people, skills "
                    + step.skills()
                    + ")")
        .toList();
  }
}
