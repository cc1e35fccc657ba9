package rigmorrow.app.board.desk;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CopyOnWriteArrayList;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.files.RefusedException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.model.explain.Cost;
import rigmorrow.model.explain.Explanation;
import rigmorrow.model.explain.Trouble;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.HandTimer;
import rigmorrow.solver.SolverSettings;
import rigmorrow.solver.explain.Explainer;
import rigmorrow.solver.hand.Timed;

/**
 * The plan that a board shows, and all that may be done to it. Every method may be called from any
 * thread. Whoever changes something names the revision that the wish is about.
 */
public final class Desk implements AutoCloseable {
  private static final PlanOrigin BY_HAND = new PlanOrigin("hand", 0, 1, 0, "done");

  private final Clock clock;
  private final History history = new History();
  private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
  private HandTimer timer;

  private Desk(Batch batch, Plan plan, Clock clock) {
    this.clock = clock;
    this.timer = new HandTimer(batch.floor());
    Timed timed = timer.time(batch, Orders.of(batch, plan), plan.origin());
    history.keep(kept(batch, Orders.of(batch, plan), timed, "The plan the board began with"));
  }

  /**
   * Opens the board of a folder, or begins one there.
   *
   * @param batch to begin with when the folder has no board; null to go on with what there is
   * @param plan of it; null for one by dispatch rules
   * @throws RefusedException when there is nothing to go on with
   */
  public static Desk open(Path folder, @Nullable Batch batch, @Nullable Plan plan, Clock clock) {
    if (batch == null) {
      throw new RefusedException(
          folder + ": there is no board; accepted: a folder with one, or a floor and a shot list",
          List.of(
              new InputProblem(
                  folder.toString(), "folder", "", "no board", "a floor and a shot list")));
    }
    return new Desk(batch, plan == null ? FloorSolver.dispatch(batch) : plan, clock);
  }

  /** The plan there is. */
  public synchronized BoardState now() {
    return history.now().state();
  }

  /** What would be undone; null when there is nothing. */
  public synchronized @Nullable String undoSentence() {
    return history.undoSentence();
  }

  /** What would be done again; null when there is nothing. */
  public synchronized @Nullable String redoSentence() {
    return history.redoSentence();
  }

  /** True while a search runs and nothing may be changed. */
  public boolean searching() {
    return false;
  }

  /**
   * What a touch would come to. Nothing is kept.
   *
   * @throws StaleException when the plan was changed since the revision
   */
  public synchronized Tried attempt(long revision, Touch touch) {
    requireFresh(revision);
    return tried(new Hand(ground(), timer).apply(touch));
  }

  /**
   * Does a touch. It is stored when this returns.
   *
   * @throws StaleException when the plan was changed since the revision
   * @throws RefusedTouchException when it cannot be done
   */
  public synchronized BoardState keep(long revision, Touch touch) {
    requireFresh(revision);
    Touched touched = new Hand(ground(), timer).apply(touch);
    Batch batch = touched.batch();
    Orders orders = touched.orders();
    if (batch == null || orders == null) {
      throw new RefusedTouchException(touched.refusals());
    }
    return keep(batch, orders, timer.time(batch, orders, BY_HAND), touched.sentence());
  }

  /** Takes back what was done last; nothing happens when there is nothing. */
  public synchronized BoardState undo(long revision) {
    requireFresh(revision);
    if (history.undoSentence() != null) {
      history.undo();
      changed();
    }
    return now();
  }

  /** Does again what was taken back last; nothing happens when there is nothing. */
  public synchronized BoardState redo(long revision) {
    requireFresh(revision);
    if (history.redoSentence() != null) {
      history.redo();
      changed();
    }
    return now();
  }

  /**
   * Another shot list in place of the one there is, with a plan by dispatch rules.
   *
   * @param sentence what it is called when it is undone, without a full stop
   */
  public BoardState replace(long revision, Batch batch, String sentence) {
    Plan plan = FloorSolver.dispatch(batch);
    synchronized (this) {
      requireFresh(revision);
      if (!batch.floor().equals(timer.floor())) {
        timer = new HandTimer(batch.floor());
      }
      Orders orders = Orders.of(batch, plan);
      return keep(batch, orders, timer.time(batch, orders, plan.origin()), sentence);
    }
  }

  /**
   * Plans again around the pins, from the plan there is.
   *
   * @throws StaleException when the plan was changed since the revision
   * @throws SearchingException when a search runs
   */
  public void search(long revision, SolverSettings settings) {
    Objects.requireNonNull(settings);
    throw new UnsupportedOperationException("search " + revision);
  }

  /** Ends the search with the best plan so far; nothing happens when none runs. */
  public void stopSearch() {}

  /** How the search stands, or how the last one ended. */
  public SearchProgress progress() {
    return SearchProgress.NONE;
  }

  /**
   * Asks to be told.
   *
   * @param changed called after every change of the plan or of a search; must be quick
   */
  public void listen(Runnable changed) {
    listeners.add(changed);
  }

  /**
   * Why the plan does with a job what it does.
   *
   * @throws IllegalArgumentException when there is no such job
   */
  public Explanation explain(String job) {
    BoardState now = now();
    return new Explainer(now.batch(), now.plan()).explain(job);
  }

  /** Every job that is late or left out, in shot list order. */
  public List<Trouble> troubles() {
    BoardState now = now();
    return new Explainer(now.batch(), now.plan()).troubles();
  }

  /** Puts the plan there is by, with a note. */
  public synchronized Version putBy(long revision, String note) {
    requireFresh(revision);
    Version version = history.put(note, clock.instant());
    changed();
    return version;
  }

  /** Every plan that was put by, oldest first. */
  public synchronized List<Version> versions() {
    return history.versions();
  }

  /**
   * A plan that was put by; 0 for the plan there is.
   *
   * @throws IllegalArgumentException when there is no such version
   */
  public synchronized BoardState state(int version) {
    return version == 0 ? now() : version(version).state();
  }

  /**
   * What a plan that was put by costs; 0 for the plan there is.
   *
   * @throws IllegalArgumentException when there is no such version
   */
  public synchronized Cost cost(int version) {
    return version == 0 ? history.now().cost() : version(version).cost();
  }

  /** Gives a version to the crew. */
  public synchronized void publish(int version) {
    version(version);
    history.published(version);
    changed();
  }

  /** Brings a version back; that can be undone. */
  public synchronized BoardState restore(long revision, int version) {
    requireFresh(revision);
    Kept kept = version(version);
    BoardState state = kept.state();
    return keep(
        state.batch(),
        kept.orders(),
        new Timed(state.plan(), kept.cost()),
        "Bring back version " + version);
  }

  @Override
  public void close() {}

  private Kept version(int number) {
    Kept kept = history.version(number);
    if (kept == null) {
      throw new IllegalArgumentException("There is no version " + number + ".");
    }
    return kept;
  }

  private Ground ground() {
    return new Ground(history.now().state().batch(), history.now().orders());
  }

  private void requireFresh(long revision) {
    if (revision != history.revision()) {
      throw new StaleException(revision, history.revision(), history.since(revision));
    }
  }

  private Tried tried(Touched touched) {
    Kept now = history.now();
    Batch batch = touched.batch();
    Orders orders = touched.orders();
    if (batch == null || orders == null) {
      return new Tried(
          now.state(),
          false,
          touched.refusals(),
          touched.sentence(),
          null,
          null,
          List.of(),
          now.cost(),
          null);
    }
    Timed timed = timer.time(batch, orders, BY_HAND);
    return new Tried(
        now.state(),
        true,
        List.of(),
        touched.sentence(),
        timed.plan(),
        batch,
        breaches(batch, timed.plan()),
        now.cost(),
        timed.cost());
  }

  private BoardState keep(Batch batch, Orders orders, Timed timed, String sentence) {
    history.keep(kept(batch, orders, timed, sentence));
    changed();
    return now();
  }

  private Kept kept(Batch batch, Orders orders, Timed timed, String sentence) {
    Cost cost = timed.cost();
    BoardState state =
        new BoardState(
            history.revision() + 1,
            batch,
            timed.plan(),
            breaches(batch, timed.plan()),
            sentence,
            clock.instant());
    return new Kept(state, orders, cost);
  }

  private static List<Breach> breaches(Batch batch, Plan plan) {
    return plan.figures().hard() == 0 ? List.of() : PlanChecker.check(batch, plan);
  }

  private void changed() {
    listeners.forEach(Runnable::run);
  }
}
