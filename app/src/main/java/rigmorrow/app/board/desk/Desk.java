package rigmorrow.app.board.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.store.PublishedFolder;
import rigmorrow.app.board.touch.Hand;
import rigmorrow.app.board.touch.Touch;
import rigmorrow.app.files.RefusedException;
import rigmorrow.app.planning.Cores;
import rigmorrow.app.planning.CoresTakenException;
import rigmorrow.model.explain.Explanation;
import rigmorrow.model.explain.Trouble;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.SolverSettings;
import rigmorrow.solver.hand.Timed;

/**
 * The plan that a board shows, and all that may be done to it. Every method may be called from any
 * thread. Whoever changes something names the revision that the wish is about; what a method has
 * changed is stored when it returns. While a search runs nothing but versions may be changed.
 */
public final class Desk implements AutoCloseable {
  private final Keeper keeper;
  private final PublishedFolder published;
  private final Asking asking = new Asking();

  Desk(Keeper keeper, PublishedFolder published) {
    this.keeper = keeper;
    this.published = published;
  }

  /**
   * Opens the board of a folder, or begins one there.
   *
   * @param batch to begin with when the folder has no board; null to go on with what there is
   * @param plan of it; null for one by dispatch rules
   * @throws RefusedException when there is nothing to go on with, another process has the board, or
   *     its file is damaged, not of this program or of a newer version of it
   */
  public static Desk open(Path folder, @Nullable Batch batch, @Nullable Plan plan, Clock clock) {
    return Opening.of(folder, batch, plan, clock);
  }

  /** Floor and shot list that the board began with, before anything was done to them. */
  public Batch begunWith() {
    return keeper.read(History::begunWith);
  }

  /** The plan there is. */
  public BoardState now() {
    return glance().state();
  }

  /** The plan there is and what can be done with it, all of one moment. */
  public Glance glance() {
    return keeper.shown();
  }

  /** What would be undone; null when there is nothing. */
  public @Nullable String undoSentence() {
    return glance().undo();
  }

  /** What would be done again; null when there is nothing. */
  public @Nullable String redoSentence() {
    return glance().redo();
  }

  /** True while a search runs and the plan cannot be changed. */
  public boolean searching() {
    return keeper.searching();
  }

  /**
   * What a touch would come to. Nothing is kept.
   *
   * @throws StaleException when the plan was changed since the revision
   * @throws SearchingException while a search runs
   */
  public Tried attempt(long revision, Touch touch) {
    return keeper.read(revision, history -> Tried.of(history, touch));
  }

  /**
   * Does a touch.
   *
   * @throws StaleException when the plan was changed since the revision
   * @throws RefusedTouchException when it cannot be done
   * @throws SearchingException while a search runs
   */
  public BoardState keep(long revision, Touch touch) {
    return keeper.change(
        revision,
        history -> {
          Hand.Touched touched = history.touched(touch);
          Batch batch = touched.batch();
          Orders orders = touched.orders();
          if (batch == null || orders == null) {
            throw new RefusedTouchException(touched.refusals());
          }
          history.keep(batch, orders, history.timed(batch, orders), touch, touched.sentence());
          return true;
        });
  }

  /**
   * Takes back what was done last; nothing happens when there is nothing.
   *
   * @throws StaleException when the plan was changed since the revision
   * @throws SearchingException while a search runs
   */
  public BoardState undo(long revision) {
    return keeper.change(revision, History::undo);
  }

  /**
   * Does again what was taken back last; nothing happens when there is nothing.
   *
   * @throws StaleException when the plan was changed since the revision
   * @throws SearchingException while a search runs
   */
  public BoardState redo(long revision) {
    return keeper.change(revision, History::redo);
  }

  /**
   * Another shot list in place of the one there is, with a plan by dispatch rules. It can be
   * undone.
   *
   * @param sentence what it is called when it is undone, without a full stop
   * @throws StaleException when the plan was changed since the revision
   * @throws SearchingException while a search runs
   * @throws RefusedException when the batch cannot be stored
   */
  public BoardState replace(long revision, Batch batch, String sentence) {
    keeper.read(revision, History::revision);
    Opening.First first = Opening.first(batch, null);
    return keeper.change(
        revision,
        history -> {
          Batch stored = first.batch();
          Timed timed = history.timer(stored.floor()).time(stored, first.orders(), first.origin());
          history.keep(stored, first.orders(), timed, null, sentence);
          return true;
        });
  }

  /**
   * Plans again around the pins, from the plan there is, on a thread of its own. What it finds is
   * kept when it is better.
   *
   * @throws StaleException when the plan was changed since the revision
   * @throws SearchingException while a search runs
   * @throws CoresTakenException while something else has the cores
   */
  public void search(long revision, SolverSettings settings) {
    keeper.search(revision, settings);
  }

  /** The cores, which a search shares with whatever else the board does. */
  public Cores cores() {
    return keeper.cores();
  }

  /** Ends the search soon, with the best plan so far; nothing happens when none runs. */
  public void stopSearch() {
    keeper.stopSearch();
  }

  /** How the search stands, or how the last one ended. */
  public SearchProgress progress() {
    return keeper.progress();
  }

  /**
   * Asks to be told.
   *
   * @param changed called after every change of the plan, its bounds, its versions or a search, on
   *     the thread that made it; must be quick
   */
  public void listen(Runnable changed) {
    keeper.listen(changed);
  }

  /**
   * Why a plan does with a job what it does.
   *
   * @param state the plan there is, or was a moment ago
   * @throws IllegalArgumentException when there is no such job
   */
  public Explanation explain(BoardState state, String job) {
    return asking.explain(state, job);
  }

  /** Every job that is late or left out in a plan, in shot list order. */
  public List<Trouble> troubles(BoardState state) {
    return asking.troubles(state);
  }

  /**
   * Puts the plan there is by.
   *
   * @param note for whoever looks for it later; may be empty
   * @throws StaleException when the plan was changed since the revision
   */
  public Version putBy(long revision, String note) {
    return keeper.note(
        history -> {
          keeper.requireFresh(revision);
          return history.putBy(note);
        });
  }

  /** Every plan that was put by, oldest first. */
  public List<Version> versions() {
    return keeper.read(History::versions);
  }

  /**
   * A plan that was put by; 0 for the plan there is.
   *
   * @throws IllegalArgumentException when there is no such version
   */
  public BoardState state(int version) {
    return version == 0 ? now() : kept(version).state();
  }

  /**
   * A plan with what its papers say of it; 0 for the plan there is.
   *
   * @throws IllegalArgumentException when there is no such version
   */
  public BoardState.Handed handed(int version) {
    return keeper.read(history -> version == 0 ? history.handed() : history.handed(version, false));
  }

  /**
   * A plan that was put by with its cost, both of one moment; 0 for the plan there is.
   *
   * @throws IllegalArgumentException when there is no such version
   */
  public Kept kept(int version) {
    return keeper.read(history -> version == 0 ? history.now() : history.version(version));
  }

  /**
   * Gives a version to the crew: its files stand in the folder {@link PublishedFolder#NAME} of the
   * board, all of them or, where it fails, all of the one before.
   *
   * @throws IllegalArgumentException when there is no such version
   * @throws UncheckedIOException when the files cannot be written
   */
  public void publish(int version) {
    BoardState.Handed handed = keeper.read(history -> history.handed(version, true));
    synchronized (published) { // Not the keeper: sheets take seconds, and touches go on.
      try {
        published.write(version, handed.state().batch(), handed.state().plan(), handed.stamp());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      keeper.note(
          history -> {
            history.published(version);
            return version;
          });
    }
  }

  /**
   * Brings a version back. It can be undone.
   *
   * @throws StaleException when the plan was changed since the revision
   * @throws SearchingException while a search runs
   * @throws IllegalArgumentException when there is no such version
   */
  public BoardState restore(long revision, int version) {
    return keeper.change(
        revision,
        history -> {
          Kept kept = history.version(version);
          Timed timed = new Timed(kept.plan(), kept.cost());
          String sentence = "Bring back version " + version;
          history.keep(kept.batch(), kept.orders(), timed, null, sentence);
          return true;
        });
  }

  /** Ends a search with the best plan so far, and lets go of the folder. */
  @Override
  public void close() {
    keeper.close();
  }
}
