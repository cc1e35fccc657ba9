package rigmorrow.app.board.touch;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;

/** Touches in words: what is done to which job, from where to where, without a full stop. */
final class TouchWords {
  private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter DATE_AND_HOUR =
      DateTimeFormatter.ofPattern("EEE uuuu-MM-dd HH:mm", Locale.ENGLISH);

  private final Ground ground;

  TouchWords(Ground ground) {
    this.ground = ground;
  }

  /** The touch before anybody asked whether it can be done. */
  String wish(Touch touch) {
    String job = job(touch.job());
    if (touch instanceof Touch.Move move) {
      return "Move "
          + job
          + from(move.job())
          + " to "
          + place(move.rig(), move.place())
          + pins(move);
    }
    if (touch instanceof Touch.Swap swap) {
      return "Swap "
          + job
          + at(swap.job())
          + " and "
          + job(swap.other())
          + at(swap.other())
          + pins(swap);
    }
    if (touch instanceof Touch.LeaveOut) {
      return "Leave out " + job + at(touch.job());
    }
    if (touch instanceof Touch.TakeIn) {
      return "Take in " + job + pins(touch);
    }
    if (touch instanceof Touch.Hold hold) {
      return "Pin " + job + holds(hold);
    }
    if (touch instanceof Touch.Release) {
      return "Take the pin off " + job + ground.pin(touch.job()).map(this::pinned).orElse("");
    }
    if (touch instanceof Touch.SetPromise promise) {
      return promise(promise, job);
    }
    Touch.SetWeight weight = (Touch.SetWeight) touch;
    String instead = ground.job(weight.job()).map(one -> " instead of " + one.weight()).orElse("");
    return "Let " + job + " count " + weight.weight() + instead;
  }

  /** A job that was put where it costs least. */
  String takenIn(Touch.TakeIn touch, Orders after) {
    return "Take in " + job(touch.job()) + " at " + there(touch.job(), after) + pins(touch);
  }

  /** A move, with the place at which the job ends up. */
  String moved(Touch.Move move, Orders after) {
    String id = move.job();
    return "Move " + job(id) + from(id) + " to " + there(id, after) + pins(move);
  }

  private String there(String job, Orders after) {
    int rig = after.rigOf(job);
    return place(ground.rig(rig), after.byRig().get(rig).indexOf(job));
  }

  private static String pins(Touch touch) {
    if (touch instanceof Touch.Swap swap) {
      return swap.pin() ? ", and pin both there" : "";
    }
    boolean pin =
        (touch instanceof Touch.Move move && move.pin())
            || (touch instanceof Touch.TakeIn takeIn && takeIn.pin());
    return pin ? ", and pin it there" : "";
  }

  /** Id and name. */
  String job(String id) {
    return ground.job(id).map(job -> id + " " + job.name()).orElse(id);
  }

  /** Where a job is, for the end of a sentence. */
  String where(String job) {
    return ground.planned(job)
        ? place(ground.rig(ground.orders().rigOf(job)), ground.placeOf(job))
        : ground.heldBack(job) ? "left out by hand" : "left out";
  }

  static String place(String rig, int place) {
    return rig + ", place " + (place + 1);
  }

  /** Floor time; with its date where it is not on the first planned day. */
  String time(LocalDateTime at) {
    boolean firstDay = at.toLocalDate().equals(ground.batch().shotList().date());
    return firstDay ? at.format(HOUR) : dated(at);
  }

  /** Floor time with its date. */
  static String dated(LocalDateTime at) {
    return at.format(DATE_AND_HOUR);
  }

  /** A promise for the end of a sentence. */
  String due(Promise promise) {
    return time(promise.dueAt()) + (promise.must() ? " as a must" : "");
  }

  private String due(String job) {
    return ground.job(job).map(ShotJob::promise).map(one -> " (" + due(one) + ")").orElse("");
  }

  private String from(String job) {
    return ground.planned(job) ? " from " + where(job) + "," : "";
  }

  private String at(String job) {
    return ground.planned(job) ? " (" + where(job) + ")" : "";
  }

  private String holds(Touch.Hold hold) {
    if (!ground.planned(hold.job())) {
      return "";
    }
    String rig = ground.rig(ground.orders().rigOf(hold.job()));
    LocalDateTime startsAt = hold.startsAt();
    return " to "
        + (hold.place() ? place(rig, ground.placeOf(hold.job())) : rig)
        + (startsAt == null ? "" : ", starting at " + time(startsAt));
  }

  private String pinned(Pin pin) {
    Integer place = pin.place();
    LocalDateTime startsAt = pin.startsAt();
    return " ("
        + (place == null ? pin.rig() : place(pin.rig(), place))
        + (startsAt == null ? "" : ", starting at " + time(startsAt))
        + ")";
  }

  private String promise(Touch.SetPromise touch, String job) {
    String before =
        ground
            .job(touch.job())
            .map(ShotJob::promise)
            .map(one -> " instead of " + due(one))
            .orElse("");
    LocalDateTime dueAt = touch.dueAt();
    return dueAt == null
        ? "Take the promise off " + job + due(touch.job())
        : "Promise " + job + " for " + due(new Promise(dueAt, touch.must())) + before;
  }
}
