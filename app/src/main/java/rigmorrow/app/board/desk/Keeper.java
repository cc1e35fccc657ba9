package rigmorrow.app.board.desk;

import java.time.Duration;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.planning.BoundsFinder;
import rigmorrow.app.planning.Cores;
import rigmorrow.app.planning.Listeners;
import rigmorrow.app.report.Counted;
import rigmorrow.model.explain.Cost;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.SolverSettings;
import rigmorrow.solver.hand.Timed;

/**
 * Lets one at a time at the history, and nobody while a search runs or with a plan in mind that is
 * gone. Those who only look never wait.
 */
final class Keeper implements AutoCloseable {
  private static final Duration LAST_WAIT = Duration.ofSeconds(15);

  private final History history;
  private final BoundsFinder bounds = new BoundsFinder();
  private final Listeners listeners = new Listeners("changes of the plan");
  private final Object lock = new Object();
  private final Cores cores = new Cores();
  private final Cores.Share share =
      cores.share(
          this::searching,
          () ->
              "A search for the plan of the day has the cores. Stop it under Plan again, or wait"
                  + " until it ends.");
  private volatile @Nullable SearchRun search;
  private volatile Glance shown;
  private long changes;
  private boolean closed;

  Keeper(History history) {
    this.history = history;
    this.shown = look();
    findBounds();
  }

  Glance shown() {
    return shown;
  }

  void listen(Runnable listener) {
    listeners.add(listener);
  }

  /** Looks something up. */
  <T> T read(Function<History, T> work) {
    synchronized (lock) {
      return work.apply(history);
    }
  }

  /** Looks something up that only means something for one plan. */
  <T> T read(long revision, Function<History, T> work) {
    synchronized (lock) {
      requireFree(revision);
      return work.apply(history);
    }
  }

  /**
   * Changes the plan.
   *
   * @param work true when it changed anything
   */
  BoardState change(long revision, Predicate<History> work) {
    BoardState after;
    synchronized (lock) {
      requireFree(revision);
      if (!work.test(history)) {
        return shown.state();
      }
      after = show();
    }
    tell();
    return after;
  }

  /** Changes something beside the plan, at any revision; a search may run. */
  <T> T note(Function<History, T> work) {
    T noted;
    synchronized (lock) {
      noted = work.apply(history);
      shown = look();
    }
    tell();
    return noted;
  }

  /** Throws unless the plan is the one that a wish is about. */
  void requireFresh(long revision) {
    if (revision != history.revision()) {
      throw new StaleException(revision, history.revision(), history.since(revision));
    }
  }

  private void requireFree(long revision) {
    if (searching()) {
      throw new SearchingException();
    }
    requireFresh(revision);
  }

  boolean searching() {
    SearchRun run = search;
    return run != null && run.running();
  }

  Cores cores() {
    return cores;
  }

  void search(long revision, SolverSettings settings) {
    share.begin(() -> begin(revision, settings));
    tell();
  }

  private void begin(long revision, SolverSettings settings) {
    SearchRun run;
    synchronized (lock) {
      requireFree(revision);
      bounds.forget();
      run = new SearchRun(history.now(), settings, this::found, this::tell);
      search = run;
    }
    run.start();
  }

  void stopSearch() {
    SearchRun run = search;
    if (run != null && run.running()) {
      run.stop();
      tell();
    }
  }

  SearchProgress progress() {
    SearchRun run = search;
    return run == null ? SearchProgress.NONE : run.progress();
  }

  /** Takes what a search found: keeps it when it is better. Then the search no longer runs. */
  private void found(SearchRun run, Plan plan) {
    synchronized (lock) {
      Kept now = history.now();
      Batch batch = now.batch();
      Orders orders = Orders.of(batch, plan);
      Timed timed = history.timer(batch.floor()).time(batch, orders, plan.origin());
      if (Cost.CHEAPEST.compare(timed.cost(), now.cost()) >= 0) {
        run.noBetter();
        findBounds();
        return;
      }
      PlanBounds known = plan.bounds();
      Plan whole = known == null ? timed.plan() : timed.plan().withBounds(known);
      int pins = batch.shotList().pins().size();
      history.keep(
          batch,
          orders,
          new Timed(whole, timed.cost()),
          null,
          "Plan again" + (pins == 0 ? "" : " around " + Counted.of(pins, "pin")));
      show(); // First: whoever sees that the search has ended must see its plan.
      run.kept(whole);
    }
  }

  private BoardState show() {
    shown = look();
    findBounds();
    return shown.state();
  }

  private Glance look() {
    changes++;
    BoardState.Handed now = history.handed();
    return new Glance(
        now.state(), now.stamp(), history.undoSentence(), history.redoSentence(), changes);
  }

  /** Has the bounds of the plan there is worked out where nobody knows them. */
  private void findBounds() {
    Kept now = history.now();
    if (now.plan().bounds() != null || now.plan().figures().hard() > 0) {
      bounds.forget();
    } else {
      bounds.find(now.batch(), now.plan(), known -> foundBounds(now.id(), known));
    }
  }

  private void foundBounds(long id, PlanBounds known) {
    synchronized (lock) {
      if (closed) {
        return;
      }
      history.setBounds(id, known);
      shown = look();
    }
    tell();
  }

  /** Tells everybody that something changed. Nobody is told while the history is held. */
  private void tell() {
    listeners.tell();
  }

  @Override
  public void close() {
    SearchRun run = search;
    if (run != null) {
      run.stop();
      run.join(LAST_WAIT);
    }
    bounds.close();
    synchronized (lock) {
      if (!closed) {
        closed = true;
        history.close();
      }
    }
  }
}
