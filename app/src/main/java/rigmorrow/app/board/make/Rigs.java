package rigmorrow.app.board.make;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.app.board.view.BoardView.RigView;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.WorkingHours;
import rigmorrow.model.use.RigUse;

/** The rigs and what their time goes into, for the page. */
final class Rigs {
  private static final double TENTHS = 10;

  private Rigs() {}

  /** Every rig, in floor order. */
  static List<RigView> of(Batch batch, Plan plan) {
    PlanClock clock = PlanClock.of(batch);
    List<RigView> views = new ArrayList<>();
    for (Rig rig : batch.floor().rigs()) {
      List<PlannedJob> jobs =
          plan.rigs().stream()
              .filter(one -> one.rig().equals(rig.id()))
              .findFirst()
              .map(RigPlan::jobs)
              .orElse(List.of());
      RigUse use = RigUse.of(rig, jobs, clock);
      views.add(
          new RigView(
              rig.id(),
              rig.name(),
              Spans.of(WorkingHours.of(rig, clock)),
              jobs.stream().map(PlannedJob::job).toList(),
              use.plannedBusySeconds(),
              use.unitBusySeconds(),
              use.unitSetupSeconds(),
              use.productionSeconds(),
              tenth(use.allocationEfficiencyPercent()),
              tenth(use.utilisationEfficiencyPercent())));
    }
    return views;
  }

  private static double tenth(double percent) {
    return Math.round(TENTHS * percent) / TENTHS;
  }
}
