package rigmorrow.model.change;

import java.util.List;
import rigmorrow.model.scenario.DemandChange;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.scenario.ScenarioChange;
import rigmorrow.model.shot.Batch;

/** The door of this package: makes the changes of a scenario, one after another. */
public final class ScenarioMaker {
  private ScenarioMaker() {}

  /**
   * The batch with the changes. A change that cannot be made is left out and told, so that all that
   * is wrong is told at once. Whether the parts of a new rig name each other rightly is checked
   * where floor files are read.
   *
   * @param batch as it was
   * @param changes in their order; a change sees what those before it have done
   */
  public static ScenarioBatch of(Batch batch, List<ScenarioChange> changes) {
    FloorDraft draft = new FloorDraft(batch);
    for (int i = 0; i < changes.size(); i++) {
      draft.begin(i);
      make(changes.get(i), draft);
    }
    return draft.finish();
  }

  private static void make(ScenarioChange change, FloorDraft draft) {
    if (change instanceof FloorChange floor) {
      make(floor, draft);
    } else if (change instanceof DemandChange.MoreJobs more) {
      new DemandDraw(draft, more.seed()).jobs(more.percent());
    } else if (change instanceof DemandChange.Mix mix) {
      new DemandDraw(draft, mix.seed()).mix(mix.factors());
    }
  }

  private static void make(FloorChange change, FloorDraft draft) {
    if (change instanceof FloorChange.RigLike like) {
      RigChanges.addLike(like, draft);
    } else if (change instanceof FloorChange.NewRig more) {
      RigChanges.add(more.rig(), draft);
    } else if (change instanceof FloorChange.RigGone gone) {
      RigChanges.remove(gone.rig(), draft);
    } else if (change instanceof FloorChange.StrobeRecycle strobes) {
      RigChanges.strobes(strobes, draft);
    } else if (change instanceof FloorChange.OperatorLike like) {
      CrewChanges.addLike(like, draft);
    } else if (change instanceof FloorChange.MoreSkills more) {
      CrewChanges.teach(more, draft);
    } else if (change instanceof FloorChange.MoreUnits more) {
      KitChanges.add(more, draft);
    } else if (change instanceof FloorChange.LongerHours longer) {
      HourChanges.longer(longer, draft);
    } else if (change instanceof FloorChange.SecondShift second) {
      HourChanges.second(second, draft);
    } else if (change instanceof FloorChange.ChangeoverTimes times) {
      ChangeoverChanges.times(times, draft);
    }
  }
}
