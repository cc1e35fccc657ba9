package rigmorrow.app.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.fit.RigFit;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.KitUnit;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.lifting.LiftAdvice;
import rigmorrow.model.setup.Changeover;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.work.ChangeoverModel;
import rigmorrow.model.work.JobWork;
import rigmorrow.model.work.LiftCheck;
import rigmorrow.model.work.WorkModel;

/**
 * All that is known of one measured job on one rig that stands as it does at the start of the plan.
 *
 * @param job the job
 * @param rig the rig
 * @param fit whether the rig can take it
 * @param work times, people, kit and cautions
 * @param changeover from the rig's first setup, with kit fetched from where it is at the start;
 *     null when the floor's tables lack a line for it
 * @param lift the lifting check; null for an item too light for it
 */
public record JobOnRig(
    ShotJob job,
    Rig rig,
    RigFit fit,
    JobWork work,
    @Nullable Changeover changeover,
    @Nullable LiftAdvice lift) {

  /**
   * Asks the floor.
   *
   * @throws IllegalArgumentException when the item is not measured
   */
  public static JobOnRig of(Floor floor, ShotJob job, Rig rig) {
    JobWork work = new WorkModel(floor).of(job, rig);
    return new JobOnRig(
        job,
        rig,
        new FitCheck(floor).of(job, rig),
        work,
        changeover(floor, rig, work),
        LiftCheck.light(job.item()) ? null : LiftCheck.of(floor.physics().lift(), job.item(), rig));
  }

  private static @Nullable Changeover changeover(Floor floor, Rig rig, JobWork work) {
    ChangeoverModel model = new ChangeoverModel(floor);
    boolean known =
        work.request().values().entrySet().stream()
            .allMatch(wanted -> known(model, rig, wanted.getKey(), wanted.getValue()));
    if (!known) {
      return null;
    }
    List<ChangeoverStep> steps =
        new ArrayList<>(model.steps(rig, rig.initialSetup(), work.request()));
    for (String id : work.kits()) {
      Kit kit = floor.kit(id).orElseThrow();
      boolean here = kit.units().stream().anyMatch(unit -> unit.place().equals(rig.id()));
      if (!here) {
        KitUnit unit = kit.units().get(0);
        steps.add(model.kitMove(kit, unit.id(), unit.place(), rig));
      }
    }
    return Changeover.of(steps, rig.twoStepsAtOnce());
  }

  private static boolean known(ChangeoverModel model, Rig rig, String attribute, String wanted) {
    String now = rig.initialSetup().value(attribute);
    return wanted.equals(now)
        || model.rule(rig, attribute, now == null ? "*" : now, wanted).isPresent();
  }
}
