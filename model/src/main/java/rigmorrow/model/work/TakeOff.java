package rigmorrow.model.work;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.time.Span;

/**
 * A piece of kit that is fetched for a job, and how long the place it comes from is busy with that.
 * A rig that it hangs on must stand still meanwhile: somebody works at it.
 *
 * @param use which piece, and the place it comes from
 * @param span from the start of the changeover that fetches it, until it has been brought: kit
 *     comes before all other steps, one piece after the other, each fetched and then aligned
 */
public record TakeOff(KitUse use, Span span) {

  /**
   * What a job has fetched, in the order in which it is done.
   *
   * @param floor that says how long it takes
   * @param rig id of the job's rig
   * @param job as planned
   */
  public static List<TakeOff> of(Floor floor, String rig, PlannedJob job) {
    List<TakeOff> all = new ArrayList<>();
    int begin = job.whole().start();
    int now = begin;
    for (Kit kit : floor.kits()) {
      for (KitUse use : job.kit()) {
        if (use.kit().equals(kit.id()) && !use.from().equals(rig)) {
          now += floor.fetchSeconds(use.from(), rig);
          all.add(new TakeOff(use, new Span(begin, now)));
          now += kit.alignSeconds();
        }
      }
    }
    return all;
  }
}
