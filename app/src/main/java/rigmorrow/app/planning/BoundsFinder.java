package rigmorrow.app.planning;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.FloorSolver;

/**
 * Works out in the background what no plan can be below. Only the last wish counts: half a second
 * of work is not done for a plan that is gone already.
 */
public final class BoundsFinder implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(BoundsFinder.class);

  /** Whoever makes one change after another does not have the machine busy in between. */
  private static final long QUIET_MILLIS = 300;

  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread made = new Thread(work, "bounds");
            made.setDaemon(true);
            made.setPriority(Thread.MIN_PRIORITY);
            return made;
          });

  private @Nullable Future<?> wish;

  /**
   * Asks for the bounds of a plan, in place of those that were asked for before.
   *
   * @param found told of them on the finder's thread, unless something else was asked for since; of
   *     a plan that breaks rules there are none
   */
  public synchronized void find(Batch batch, Plan plan, Consumer<PlanBounds> found) {
    forget();
    wish = thread.submit(() -> work(batch, plan, found));
  }

  /** Gives up what was asked for. */
  public synchronized void forget() {
    if (wish != null) {
      wish.cancel(true);
      wish = null;
    }
  }

  private static void work(Batch batch, Plan plan, Consumer<PlanBounds> found) {
    try {
      Thread.sleep(QUIET_MILLIS);
      PlanBounds bounds = FloorSolver.withBounds(batch, plan).bounds();
      if (bounds != null && !Thread.currentThread().isInterrupted()) {
        found.accept(bounds);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (RuntimeException e) {
      LOG.error("The bounds could not be worked out", e);
    }
  }

  @Override
  public void close() {
    thread.shutdownNow();
  }
}
