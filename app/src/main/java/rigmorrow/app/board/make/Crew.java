package rigmorrow.app.board.make;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.app.board.view.BoardView.OperatorView;
import rigmorrow.app.board.view.BoardView.TaskView;
import rigmorrow.app.report.CrewLoad;
import rigmorrow.app.runsheet.chart.LaneKind;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;
import rigmorrow.model.time.WorkingHours;

/** The crew and what each of them does, for the page. */
final class Crew {
  private Crew() {}

  /** Every operator, in floor order. */
  static List<OperatorView> of(Batch batch, Plan plan) {
    PlanClock clock = PlanClock.of(batch);
    Map<String, List<TaskView>> tasks = tasks(plan);
    List<CrewLoad> loads = CrewLoad.of(batch, plan);
    List<OperatorView> views = new ArrayList<>();
    for (int i = 0; i < loads.size(); i++) {
      Operator operator = batch.floor().crew().get(i);
      views.add(
          new OperatorView(
              operator.id(),
              operator.name(),
              operator.skills().stream().sorted().toList(),
              Spans.of(WorkingHours.of(operator, clock)),
              Spans.of(WorkingHours.breaks(operator, clock)),
              tasks.getOrDefault(operator.id(), List.of()),
              loads.get(i).handsOnSeconds(),
              loads.get(i).shiftSeconds()));
    }
    return views;
  }

  private static Map<String, List<TaskView>> tasks(Plan plan) {
    Map<String, List<TaskView>> tasks = new HashMap<>();
    for (RigPlan rig : plan.rigs()) {
      for (PlannedJob job : rig.jobs()) {
        if (job.changeover() != null) {
          List<String> people = job.changeover().operators();
          add(tasks, people, rig, job, LaneKind.CHANGEOVER, job.changeover().span());
        }
        add(tasks, job.load().operators(), rig, job, LaneKind.LOAD, job.load().span());
        add(tasks, job.captureOperators(), rig, job, LaneKind.CAPTURE, job.capture());
        add(tasks, job.unload().operators(), rig, job, LaneKind.UNLOAD, job.unload().span());
      }
    }
    tasks.values().forEach(list -> list.sort(Comparator.comparingInt(TaskView::start)));
    return tasks;
  }

  private static void add(
      Map<String, List<TaskView>> tasks,
      List<String> operators,
      RigPlan rig,
      PlannedJob job,
      LaneKind part,
      Span span) {
    for (String operator : operators) {
      tasks
          .computeIfAbsent(operator, key -> new ArrayList<>())
          .add(new TaskView(job.job(), rig.rig(), part.name(), span.start(), span.end()));
    }
  }
}
