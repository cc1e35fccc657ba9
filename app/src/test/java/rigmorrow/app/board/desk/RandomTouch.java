package rigmorrow.app.board.desk;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Random;
import rigmorrow.app.board.touch.Touch;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.ShotJob;

/** Any touch of any kind, whether it can be done or not. */
final class RandomTouch {
  private static final int KINDS = 11;

  private RandomTouch() {}

  static Touch of(BoardState now, Random random) {
    List<ShotJob> jobs = now.batch().shotList().jobs();
    String job = jobs.get(random.nextInt(jobs.size())).id();
    String other = jobs.get(random.nextInt(jobs.size())).id();
    List<RigPlan> rigs = now.plan().rigs();
    RigPlan rig = rigs.get(random.nextInt(rigs.size()));
    LocalDateTime time =
        now.batch().shotList().date().atTime(8 + random.nextInt(9), 15 * random.nextInt(4));
    return switch (random.nextInt(KINDS)) {
      case 0 -> new Touch.Hold(job, random.nextBoolean(), random.nextInt(3) == 0 ? time : null);
      case 1 -> new Touch.Release(job);
      case 2 -> new Touch.SetWeight(job, 1 + random.nextInt(9));
      case 3 ->
          new Touch.SetPromise(job, random.nextInt(4) == 0 ? null : time, random.nextInt(5) == 0);
      case 4 -> new Touch.LeaveOut(job);
      case 5 -> new Touch.TakeIn(job);
      case 6 -> new Touch.Swap(job, other);
      default -> new Touch.Move(job, rig.rig(), random.nextInt(rig.jobs().size() + 1));
    };
  }
}
