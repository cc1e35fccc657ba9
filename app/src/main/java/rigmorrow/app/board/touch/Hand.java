package rigmorrow.app.board.touch;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.solver.HandTimer;

/**
 * Does a touch to a shot list and to orders; times are for the decoder. A job that is pinned to a
 * place keeps it where it can: the others of its rig flow around it.
 */
public final class Hand {
  private static final int LIGHTEST = 1;
  private static final int HEAVIEST = 1000;

  private final Ground ground;
  private final HandTimer timer;
  private final TouchWords words;
  private final Refusals refusals;

  /**
   * What a touch makes of a shot list and of the orders, before anything is decoded.
   *
   * @param sentence the touch in words, without a full stop
   * @param refusals why it cannot be done; empty when it can
   * @param batch floor and shot list with the touch; null when it cannot be done
   * @param orders with the touch; null when it cannot be done
   */
  public record Touched(
      String sentence, List<String> refusals, @Nullable Batch batch, @Nullable Orders orders) {}

  /**
   * @param ground what the touch meets
   * @param timer of the floor
   */
  public Hand(Ground ground, HandTimer timer) {
    this.ground = ground;
    this.timer = timer;
    this.words = new TouchWords(ground);
    this.refusals = new Refusals(ground, timer, words);
  }

  /** What comes of a touch. */
  public Touched apply(Touch touch) {
    Optional<ShotJob> job = refusals.known(touch.job());
    if (job.isEmpty()) {
      return refused(touch);
    }
    if (touch instanceof Touch.Move move) {
      return move(move, job.get());
    }
    if (touch instanceof Touch.Swap swap) {
      return swap(swap, job.get());
    }
    if (touch instanceof Touch.LeaveOut) {
      return leaveOut(touch, job.get());
    }
    if (touch instanceof Touch.TakeIn takeIn) {
      return takeIn(takeIn, job.get());
    }
    if (touch instanceof Touch.Hold hold) {
      return hold(hold);
    }
    if (touch instanceof Touch.Release) {
      return release(touch);
    }
    if (touch instanceof Touch.SetPromise promise) {
      return promise(promise, job.get());
    }
    return weight((Touch.SetWeight) touch, job.get());
  }

  private Touched move(Touch.Move move, ShotJob job) {
    String id = job.id();
    Orders others = ground.orders().without(id);
    refusals.running(id);
    refusals.pinned(id, move.rig());
    if (refusals.rig(move.rig())) {
      refusals.takes(job, move.rig(), new Ground(released(id), others));
      refusals.place(others, ground.rigs().indexOf(move.rig()), move.place());
    }
    if (!refusals.none()) {
      return refused(move);
    }
    Orders there = ground.seated(others.with(ground.rigs().indexOf(move.rig()), move.place(), id));
    if (there.equals(ground.orders())) {
      refusals.add(words.job(id) + " is at " + words.where(id) + " already.");
      return refused(move);
    }
    Touched moved = new Touched(words.moved(move, there), List.of(), released(id), there);
    return move.pin() ? pinned(move, moved, List.of(id)) : moved;
  }

  private Touched swap(Touch.Swap swap, ShotJob job) {
    Optional<ShotJob> known = refusals.known(swap.other());
    if (known.isEmpty()) {
      return refused(swap);
    }
    ShotJob other = known.get();
    if (other.id().equals(job.id())) {
      refusals.add("A job cannot change places with itself.");
      return refused(swap);
    }
    refusals.planned(job.id());
    refusals.planned(other.id());
    if (!refusals.none()) {
      return refused(swap);
    }
    goes(job, other);
    goes(other, job);
    if (!refusals.none()) {
      return refused(swap);
    }
    Orders there = ground.swapped(job.id(), other.id());
    Touched swapped = new Touched(words.wish(swap), List.of(), ground.batch(), there);
    return swap.pin() ? pinned(swap, swapped, List.of(job.id(), other.id())) : swapped;
  }

  private void goes(ShotJob job, ShotJob to) {
    String rig = ground.rig(ground.orders().rigOf(to.id()));
    refusals.running(job.id());
    refusals.pinned(job.id(), rig);
    if (ground.orders().rigOf(job.id()) != ground.orders().rigOf(to.id())) {
      refusals.takes(job, rig, ground);
    }
  }

  private Touched leaveOut(Touch touch, ShotJob job) {
    String id = job.id();
    refusals.running(id);
    refusals.pinned(id);
    refusals.fitsSomewhere(job);
    if (ground.heldBack(id)) {
      refusals.add(words.job(id) + " is left out by hand already.");
    }
    if (!refusals.none()) {
      return refused(touch);
    }
    List<String> held = new ArrayList<>(ground.batch().shotList().heldBack());
    held.add(id);
    return new Touched(
        words.wish(touch),
        List.of(),
        list(list -> list.withHeldBack(held)),
        ground.seated(ground.orders().without(id)));
  }

  private Touched takeIn(Touch.TakeIn touch, ShotJob job) {
    String id = job.id();
    if (ground.planned(id)) {
      refusals.add(words.job(id) + " is planned already: " + words.where(id) + ".");
    }
    refusals.fitsSomewhere(job);
    if (!refusals.none()) {
      return refused(touch);
    }
    Batch batch = released(id);
    Orders cheapest = timer.cheapest(batch, ground.orders(), id);
    if (cheapest == null) {
      refusals.add("No rig that can take " + words.job(id) + " is ever open for long enough.");
      return refused(touch);
    }
    Orders there = ground.seated(cheapest);
    Touched taken = new Touched(words.takenIn(touch, there), List.of(), batch, there);
    return touch.pin() ? pinned(touch, taken, List.of(id)) : taken;
  }

  private Touched hold(Touch.Hold hold) {
    String id = hold.job();
    refusals.running(id);
    refusals.planned(id);
    refusals.hold(hold);
    if (!refusals.none()) {
      return refused(hold);
    }
    Pin pin =
        new Pin(
            id,
            ground.rig(ground.orders().rigOf(id)),
            hold.place() ? ground.placeOf(id) : null,
            hold.startsAt(),
            PinState.PLANNED);
    if (ground.pin(id).filter(pin::equals).isPresent()) {
      refusals.add(words.job(id) + " is pinned so already.");
      return refused(hold);
    }
    List<Pin> pins = otherPins(id);
    pins.add(pin);
    return new Touched(
        words.wish(hold), List.of(), list(list -> list.withPins(pins)), ground.orders());
  }

  private Touched release(Touch touch) {
    refusals.running(touch.job());
    if (ground.pin(touch.job()).isEmpty()) {
      refusals.add(words.job(touch.job()) + " is not pinned.");
    }
    return refusals.none()
        ? new Touched(
            words.wish(touch),
            List.of(),
            list(list -> list.withPins(otherPins(touch.job()))),
            ground.orders())
        : refused(touch);
  }

  private Touched promise(Touch.SetPromise touch, ShotJob job) {
    LocalDateTime dueAt = touch.dueAt();
    Promise promise = dueAt == null ? null : new Promise(dueAt, touch.must());
    if (promise != null) {
      refusals.promise(job, promise);
    }
    if (Optional.ofNullable(promise).equals(Optional.ofNullable(job.promise()))) {
      refusals.add(
          words.job(job.id())
              + (promise == null ? " has no promise already." : " is promised so already."));
    }
    return refusals.none()
        ? new Touched(
            words.wish(touch),
            List.of(),
            list(list -> list.withJob(job.id(), one -> one.withPromise(promise))),
            ground.orders())
        : refused(touch);
  }

  private Touched weight(Touch.SetWeight touch, ShotJob job) {
    if (touch.weight() < LIGHTEST || touch.weight() > HEAVIEST) {
      refusals.add(
          "A job counts from " + LIGHTEST + " to " + HEAVIEST + ", not " + touch.weight() + ".");
    } else if (touch.weight() == job.weight()) {
      refusals.add(words.job(job.id()) + " counts " + job.weight() + " already.");
    }
    return refusals.none()
        ? new Touched(
            words.wish(touch),
            List.of(),
            list(list -> list.withJob(job.id(), one -> one.withWeight(touch.weight()))),
            ground.orders())
        : refused(touch);
  }

  /** The same with jobs pinned to where they end up. */
  private Touched pinned(Touch touch, Touched done, List<String> ids) {
    Batch batch = Objects.requireNonNull(done.batch());
    Orders there = Objects.requireNonNull(done.orders());
    List<Pin> pins = new ArrayList<>(batch.shotList().pins());
    for (String id : ids) {
      Pin pin = ground.pinTo(id, there);
      pins.removeIf(old -> old.job().equals(id));
      pins.add(pin);
      refusals.seat(id, pin.rig(), there.byRig().get(there.rigOf(id)).indexOf(id));
    }
    Batch held = new Batch(batch.floor(), batch.shotList().withPins(pins));
    return refusals.none() ? new Touched(done.sentence(), List.of(), held, there) : refused(touch);
  }

  private Touched refused(Touch touch) {
    return new Touched(words.wish(touch), refusals.sentences(), null, null);
  }

  private Batch list(UnaryOperator<ShotList> change) {
    return new Batch(ground.batch().floor(), change.apply(ground.batch().shotList()));
  }

  /** The batch with a job not held back. */
  private Batch released(String id) {
    return ground.heldBack(id)
        ? list(
            list ->
                list.withHeldBack(list.heldBack().stream().filter(one -> !one.equals(id)).toList()))
        : ground.batch();
  }

  private List<Pin> otherPins(String id) {
    List<Pin> pins = new ArrayList<>(ground.batch().shotList().pins());
    pins.removeIf(pin -> pin.job().equals(id));
    return pins;
  }
}
