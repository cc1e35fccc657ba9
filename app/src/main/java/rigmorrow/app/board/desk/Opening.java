package rigmorrow.app.board.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.store.BoardStore;
import rigmorrow.app.board.store.PublishedFolder;
import rigmorrow.app.board.store.Step;
import rigmorrow.app.board.store.StoredState;
import rigmorrow.app.files.RefusedException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.HandTimer;

/** Opens a board, or begins one. */
final class Opening {
  private Opening() {}

  /**
   * A plan to begin with, as the store will hold it.
   *
   * @param bounds of a plan that came with them; null for another
   */
  record First(Batch batch, Orders orders, PlanOrigin origin, @Nullable PlanBounds bounds) {}

  static Desk of(Path folder, @Nullable Batch batch, @Nullable Plan plan, Clock clock) {
    if (batch == null && !Files.exists(folder.resolve(BoardStore.NAME))) {
      throw nothing(folder);
    }
    First first = null;
    BoardStore store = BoardStore.open(folder);
    try {
      Step last = store.last().orElse(null);
      if (last == null) {
        if (batch == null) {
          throw nothing(folder);
        }
        first = first(batch, plan);
        store.keep(
            new StoredState.Content(
                first.batch(),
                first.orders(),
                first.origin(),
                first.bounds(),
                null,
                "The plan that the board began with",
                clock.instant()));
        last = store.last().orElseThrow();
      }
      History history = new History(store, last, clock);
      PublishedFolder published = new PublishedFolder(folder, store.id());
      reconcile(store, published, clock);
      return new Desk(new Keeper(history), published);
    } catch (IOException e) {
      store.close();
      throw new UncheckedIOException(e);
    } catch (RuntimeException e) {
      store.close();
      throw e;
    }
  }

  /**
   * A plan to begin with.
   *
   * @param plan null for one by dispatch rules
   * @throws RefusedException when the batch cannot be stored, or the plan is none of it
   */
  static First first(Batch batch, @Nullable Plan plan) {
    Batch stored = BoardStore.storable(batch);
    if (plan == null) {
      Plan made = FloorSolver.dispatch(stored);
      return new First(stored, Orders.of(stored, made), made.origin(), null);
    }
    try {
      Orders orders = Orders.of(stored, plan);
      Plan again = new HandTimer(stored.floor()).time(stored, orders, plan.origin()).plan();
      boolean same = again.figures().equals(plan.figures());
      return new First(stored, orders, plan.origin(), same ? plan.bounds() : null);
    } catch (IllegalArgumentException e) {
      String accepted = "a plan of this floor and this shot list";
      throw new RefusedException(
          "The plan cannot be shown: " + e.getMessage() + "; accepted: " + accepted,
          List.of(new InputProblem("", "plan", "", "" + e.getMessage(), accepted)));
    }
  }

  /** The files of a version may have been written just before the program ended. */
  private static void reconcile(BoardStore store, PublishedFolder published, Clock clock)
      throws IOException {
    int written = published.recover();
    boolean known = store.versions().stream().anyMatch(one -> one.number() == written);
    if (known && store.published() != written) {
      store.publish(written, clock.instant());
    }
  }

  private static RefusedException nothing(Path folder) {
    String accepted = "a folder with a board, or a floor and a shot list to begin with";
    return new RefusedException(
        folder + ": there is no board; accepted: " + accepted,
        List.of(new InputProblem(folder.toString(), "folder", "", "no board", accepted)));
  }
}
