package rigmorrow.app.board.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.store.BoardStore;
import rigmorrow.app.board.store.Stamps;
import rigmorrow.app.board.store.Step;
import rigmorrow.app.board.store.StoredState;
import rigmorrow.app.board.store.StoredVersion;
import rigmorrow.app.board.touch.Ground;
import rigmorrow.app.board.touch.Hand;
import rigmorrow.app.board.touch.Touch;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.solver.HandTimer;
import rigmorrow.solver.hand.Timed;

/**
 * Every state there was, and the way to the one there is. What the store holds is decoded again
 * when it is asked for. One thread at a time.
 */
final class History implements AutoCloseable {
  /** How many states are remembered decoded: enough to go back and forth among the last. */
  private static final int MOST_REMEMBERED = 32;

  /** Id of the state that the board began with. */
  private static final long FIRST = 1;

  private static final PlanOrigin BY_HAND = new PlanOrigin("hand", 0, 1, 0, "done");

  private static final ObjectMapper JSON =
      new ObjectMapper()
          .registerModule(new JavaTimeModule())
          .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS);

  private final BoardStore store;
  private final Stamps stamps;
  private final Clock clock;
  private final Map<Long, Kept> remembered =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Long, Kept> eldest) {
          return size() > MOST_REMEMBERED;
        }
      };

  private HandTimer timer;
  private Step step;
  private Kept now;
  private @Nullable String undo;
  private @Nullable String redo;

  /**
   * Goes on with what a store holds.
   *
   * @param last step in the store
   */
  History(BoardStore store, Step last, Clock clock) {
    this.store = store;
    this.stamps = new Stamps(store);
    this.clock = clock;
    this.step = last;
    StoredState state = store.state(last.state());
    this.timer = new HandTimer(state.content().batch().floor());
    this.now = decoded(state).at(last.revision());
    look();
  }

  Batch begunWith() {
    return store.state(FIRST).content().batch();
  }

  Kept now() {
    return now;
  }

  long revision() {
    return step.revision();
  }

  @Nullable String undoSentence() {
    return undo;
  }

  @Nullable String redoSentence() {
    return redo;
  }

  HandTimer timer(Floor floor) {
    if (!timer.floor().equals(floor)) {
      timer = new HandTimer(floor);
    }
    return timer;
  }

  /** What a touch makes of the plan there is, before anything is decoded. */
  Hand.Touched touched(Touch touch) {
    Ground ground = new Ground(now.batch(), now.orders());
    return new Hand(ground, timer(now.batch().floor())).apply(touch);
  }

  /** Decodes orders that were made by hand. */
  Timed timed(Batch batch, Orders orders) {
    return timer(batch.floor()).time(batch, orders, BY_HAND);
  }

  /** Keeps a new state in place of the one there is. */
  void keep(Batch batch, Orders orders, Timed timed, @Nullable Touch touch, String sentence) {
    PlanBounds bounds = timed.plan().bounds();
    StoredState stored =
        store.keep(
            new StoredState.Content(
                batch,
                orders,
                timed.plan().origin(),
                bounds == null ? now.boundsFor(batch, timed.plan()) : bounds,
                touch == null ? null : json(touch),
                sentence,
                clock.instant()));
    Step kept =
        new Step(
            stored.revision(),
            stored.id(),
            stored.id(),
            Step.Kind.KEPT,
            sentence,
            stored.content().at());
    went(state(stored, timed), kept);
  }

  /** Goes a step back; nothing happens when there is none. */
  boolean undo() {
    Optional<StoredState> before = store.before(step);
    before.ifPresent(to -> go(Step.Kind.UNDONE, to, now.state().sentence()));
    return before.isPresent();
  }

  /** Goes a step forth; nothing happens when there is none. */
  boolean redo() {
    Optional<StoredState> after = store.after(step);
    after.ifPresent(to -> go(Step.Kind.REDONE, to, to.content().sentence()));
    return after.isPresent();
  }

  private void go(Step.Kind kind, StoredState to, String sentence) {
    Kept there = decoded(to);
    went(there, store.go(kind, to.id(), sentence, clock.instant()));
  }

  /** What was done since a revision, the oldest first. */
  List<String> since(long revision) {
    return store.since(revision).stream()
        .map(
            one ->
                switch (one.kind()) {
                  case KEPT -> one.sentence();
                  case UNDONE -> "Undone: " + one.sentence();
                  case REDONE -> "Done again: " + one.sentence();
                })
        .toList();
  }

  /** Notes what no plan can be below; for the state that it was worked out for. */
  void setBounds(long id, PlanBounds bounds) {
    store.setBounds(id, bounds);
    remembered.computeIfPresent(id, (key, kept) -> kept.with(bounds));
    if (now.id() == id) {
      now = now.with(bounds);
    }
  }

  Version putBy(String note) {
    StoredVersion put = store.putBy(now.id(), note, clock.instant());
    return new Version(put.number(), note, put.at(), false);
  }

  List<Version> versions() {
    int published = store.published();
    return store.versions().stream()
        .map(one -> new Version(one.number(), one.note(), one.at(), one.number() == published))
        .toList();
  }

  /**
   * A state that was put by.
   *
   * @throws IllegalArgumentException when there is none of this number
   */
  Kept version(int number) {
    return store.versions().stream()
        .filter(one -> one.number() == number)
        .findFirst()
        .map(one -> decoded(store.state(one.state())))
        .orElseThrow(() -> new IllegalArgumentException("There is no version " + number + "."));
  }

  /** The plan there is with what its papers say of it. */
  BoardState.Handed handed() {
    BoardState state = now.state();
    return new BoardState.Handed(
        state, stamps.ofState(now.id(), step.revision(), state.at(), state.batch(), state.plan()));
  }

  /**
   * A version with what its papers say of it.
   *
   * @param toPublish true when they are about to be published
   * @throws IllegalArgumentException when there is no such version
   */
  BoardState.Handed handed(int number, boolean toPublish) {
    BoardState state = version(number).state();
    Batch batch = state.batch();
    Plan plan = state.plan();
    return new BoardState.Handed(
        state,
        toPublish
            ? stamps.ofPublished(number, batch, plan)
            : stamps.ofVersion(number, batch, plan));
  }

  void published(int number) {
    store.publish(number, clock.instant());
  }

  @Override
  public void close() {
    store.close();
  }

  private void went(Kept there, Step made) {
    step = made;
    now = there.at(made.revision());
    look();
  }

  private void look() {
    undo = store.before(step).isPresent() ? now.state().sentence() : null;
    redo = store.after(step).map(state -> state.content().sentence()).orElse(null);
  }

  private Kept decoded(StoredState stored) {
    Kept known = remembered.get(stored.id());
    if (known != null) {
      return known;
    }
    StoredState.Content content = stored.content();
    Batch batch = content.batch();
    try {
      return state(stored, timer(batch.floor()).time(batch, content.orders(), content.origin()));
    } catch (IllegalArgumentException e) {
      throw store.damaged("state " + stored.id() + ": " + e.getMessage());
    }
  }

  private Kept state(StoredState stored, Timed timed) {
    StoredState.Content content = stored.content();
    PlanBounds bounds = content.bounds();
    Plan plan = bounds == null ? timed.plan() : timed.plan().withBounds(bounds);
    BoardState state =
        new BoardState(
            stored.revision(),
            content.batch(),
            plan,
            breaches(content.batch(), plan),
            content.sentence(),
            content.at());
    Kept kept = new Kept(stored.id(), state, content.orders(), timed.cost());
    remembered.put(stored.id(), kept);
    return kept;
  }

  static List<Breach> breaches(Batch batch, Plan plan) {
    return plan.figures().hard() == 0 ? List.of() : PlanChecker.check(batch, plan);
  }

  private static String json(Touch touch) {
    try {
      return JSON.writeValueAsString(touch);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a touch cannot be written", e);
    }
  }
}
