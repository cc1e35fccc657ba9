package rigmorrow.solver.hand;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.plan.Orders;
import rigmorrow.solver.timeline.Sequences;

/** Tries a job, which the orders do not have, at every place there is for it. */
public final class Places {
  private final Trial trial;
  private final Orders orders;
  private final String job;
  private final Set<String> fixed;
  private @Nullable Orders best;
  private @Nullable Sequences bestScore;
  private int tried;

  /**
   * @param trial what to decode on
   * @param orders without the job
   * @param job to be placed
   * @param fixed ids of jobs that are running or done: nothing goes before them
   */
  public Places(Trial trial, Orders orders, String job, Set<String> fixed) {
    this.trial = trial;
    this.orders = orders;
    this.job = job;
    this.fixed = fixed;
  }

  /** Tries every place of a rig behind what is running or done; of equals the first stays. */
  public Places on(int rig) {
    return onExcept(rig, -1);
  }

  /** The same but for one place. */
  public Places onExcept(int rig, int except) {
    for (int place = orders.firstFree(rig, fixed); place <= orders.length(rig); place++) {
      if (place != except) {
        Orders there = orders.with(rig, place, job);
        Sequences score = trial.score(there);
        tried++;
        if (bestScore == null || score.betterThan(bestScore)) {
          best = there;
          bestScore = score;
        }
      }
    }
    return this;
  }

  /** Tries every place of every rig that takes the job. */
  public Places everywhere() {
    for (int rig = 0; rig < orders.byRig().size(); rig++) {
      if (trial.takes(rig, job)) {
        on(rig);
      }
    }
    return this;
  }

  /** The cheapest of what was tried; null when nothing was. */
  public @Nullable Orders best() {
    return best;
  }

  public int tried() {
    return tried;
  }
}
