package rigmorrow.solver.search;

import java.util.concurrent.Phaser;
import org.jspecify.annotations.Nullable;
import rigmorrow.solver.timeline.Sequences;

/**
 * Where searches side by side meet: at parts of their effort that are alike for all, each lays its
 * plan down, and who has a worse one goes on from the best. Everybody waits for everybody, so that
 * the same seeds and steps give the same plans however the threads run.
 */
public final class Exchange {
  private static final int MEETINGS = 32;

  private final Phaser phaser;
  private final @Nullable Sequences[] plans;
  private final boolean[] left;

  /**
   * @param searches that take part, at least 1
   */
  public Exchange(int searches) {
    this.phaser = new Phaser(searches);
    this.plans = new Sequences[searches];
    this.left = new boolean[searches];
  }

  /** Number of the meeting that a search is due at, by the part of its effort that is spent. */
  static int due(double spent) {
    return (int) (spent * (MEETINGS + 1));
  }

  /**
   * Lays a plan down and waits for the others.
   *
   * @param search number of the search
   * @return the best of the others' plans where it is better, else null
   */
  @Nullable Sequences meet(int search, Sequences mine) {
    plans[search] = mine;
    phaser.arriveAndAwaitAdvance();
    Sequences better = null;
    for (Sequences plan : plans) {
      if (plan != null && plan.betterThan(better == null ? mine : better)) {
        better = plan;
      }
    }
    // Nobody lays the next plan down before all have read this one.
    phaser.arriveAndAwaitAdvance();
    return better;
  }

  /**
   * A search takes no part any more: the others wait for it no longer. Called by its own thread;
   * calling it again does nothing.
   */
  void leave(int search) {
    if (!left[search]) {
      left[search] = true;
      phaser.arriveAndDeregister();
    }
  }

  /** True when the search takes no part any more. */
  boolean hasLeft(int search) {
    return left[search];
  }
}
