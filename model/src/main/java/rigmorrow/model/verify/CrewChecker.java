package rigmorrow.model.verify;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.time.Span;
import rigmorrow.model.work.JobWork;

/** Whether each hands-on part has enough able people, who are there and do nothing else. */
final class CrewChecker {
  private final Batch batch;
  private final BreachLog log;

  CrewChecker(Batch batch, BreachLog log) {
    this.batch = batch;
    this.log = log;
  }

  /** What keeps people busy: a part's name as sentences put it, when, and who. */
  private record Task(String name, Span span, List<String> operators) {}

  void check(List<PlannedRun> runs) {
    List<Task> tasks = new ArrayList<>();
    for (PlannedRun run : runs) {
      tasks.addAll(tasks(run));
      needs(run);
    }
    for (Operator operator : batch.floor().crew()) {
      List<Task> own =
          tasks.stream().filter(task -> task.operators().contains(operator.id())).toList();
      hours(operator, own);
      oneAtATime(operator.id(), own);
    }
  }

  private static List<Task> tasks(PlannedRun run) {
    PlannedJob planned = run.planned();
    List<Task> tasks = new ArrayList<>();
    Attended changeover = planned.changeover();
    if (changeover != null) {
      tasks.add(new Task("changeover of " + run.id(), changeover.span(), changeover.operators()));
    }
    Span load = planned.load().span();
    boolean stays = attendedCapture(run);
    int busyUntil = stays ? Math.max(load.end(), planned.capture().end()) : load.end();
    tasks.add(
        new Task(
            (stays ? "load and capture of " : "load of ") + run.id(),
            new Span(load.start(), busyUntil),
            planned.load().operators()));
    tasks.add(
        new Task("unload of " + run.id(), planned.unload().span(), planned.unload().operators()));
    return tasks;
  }

  private static boolean attendedCapture(PlannedRun run) {
    JobWork work = run.work();
    return work == null ? !run.planned().captureOperators().isEmpty() : work.attendedCapture();
  }

  private void needs(PlannedRun run) {
    PlannedJob planned = run.planned();
    Attended changeover = planned.changeover();
    var rig = run.rig();
    if (changeover != null && rig != null && !planned.steps().isEmpty()) {
      Set<String> skills = new TreeSet<>();
      for (ChangeoverStep step : planned.steps()) {
        skills.addAll(step.skills());
      }
      int people =
          ExpectedSteps.sum(planned.steps(), batch.floor().sharesChangeovers(rig)).people();
      part(run, "changeover", changeover, changeover.span().seconds(), people, skills);
    }
    JobWork work = run.work();
    if (work != null) {
      int busy =
          planned.load().span().seconds() + (work.attendedCapture() ? work.captureSeconds() : 0);
      part(run, "load", planned.load(), busy, work.load().people(), work.load().skills());
      part(
          run,
          "unload",
          planned.unload(),
          planned.unload().span().seconds(),
          work.unload().people(),
          work.unload().skills());
      captureCrew(run, work.attendedCapture() ? planned.load().operators() : List.of());
    }
  }

  private void captureCrew(PlannedRun run, List<String> expected) {
    List<String> actual = run.planned().captureOperators();
    Set<String> differing = new HashSet<>(expected);
    differing.addAll(actual);
    differing.removeIf(id -> expected.contains(id) && actual.contains(id));
    log.add(
        FloorRule.ENOUGH_PEOPLE,
        run.id(),
        differing.size(),
        "Capture of " + run.id() + " has operators " + actual + " instead of " + expected + ".");
  }

  private void part(
      PlannedRun run,
      String name,
      Attended attended,
      int busySeconds,
      int people,
      Set<String> skills) {
    if (attended.operators().isEmpty() && busySeconds == 0) {
      return; // What takes no time needs nobody.
    }
    Set<String> present = new LinkedHashSet<>(attended.operators());
    present.removeIf(id -> batch.floor().operator(id).isEmpty());
    log.add(
        FloorRule.ENOUGH_PEOPLE,
        run.id(),
        Math.abs((long) present.size() - people),
        "The "
            + name
            + " of "
            + run.id()
            + " at "
            + log.time(attended.span().start())
            + " has "
            + present.size()
            + " of the crew "
            + attended.operators()
            + " instead of "
            + people
            + ".");
    attended.operators().stream()
        .findFirst()
        .flatMap(batch.floor()::operator)
        .ifPresent(inCharge -> skills(run, name, inCharge, skills));
  }

  private void skills(PlannedRun run, String name, Operator inCharge, Set<String> needed) {
    Set<String> missing = new TreeSet<>(needed);
    missing.removeAll(inCharge.skills());
    log.add(
        FloorRule.OPERATOR_SKILLS,
        inCharge.id(),
        missing.size(),
        "Operator "
            + inCharge.id()
            + " does the "
            + name
            + " of "
            + run.id()
            + " without "
            + String.join(", ", missing)
            + ".");
  }

  private void hours(Operator operator, List<Task> tasks) {
    OpenTime shifts = OpenTime.of(operator, log.clock());
    for (Task task : tasks) {
      int away = shifts.closedSeconds(task.span());
      log.add(
          FloorRule.OPERATOR_HOURS,
          operator.id(),
          away,
          () ->
              "Operator "
                  + operator.id()
                  + " does the "
                  + task.name()
                  + " from "
                  + log.times(task.span())
                  + ", "
                  + away
                  + " s of it outside working hours.");
    }
  }

  private void oneAtATime(String operator, List<Task> tasks) {
    for (int i = 0; i < tasks.size(); i++) {
      for (Task other : tasks.subList(i + 1, tasks.size())) {
        Task task = tasks.get(i);
        int shared = PlannedRun.sharedSeconds(task.span(), other.span());
        log.add(
            FloorRule.OPERATOR_ONE_TASK,
            operator,
            shared,
            () ->
                "Operator "
                    + operator
                    + " does the "
                    + task.name()
                    + " from "
                    + log.times(task.span())
                    + " and the "
                    + other.name()
                    + " from "
                    + log.times(other.span())
                    + ", "
                    + shared
                    + " s at once.");
      }
    }
  }
}
