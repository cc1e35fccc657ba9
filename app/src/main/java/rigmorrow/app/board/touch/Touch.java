package rigmorrow.app.board.touch;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.annotation.Nulls;
import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/** One thing a planner does to a plan by hand. Ids are those of the floor and the shot list. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
  @JsonSubTypes.Type(value = Touch.Move.class, name = "MOVE"),
  @JsonSubTypes.Type(value = Touch.Swap.class, name = "SWAP"),
  @JsonSubTypes.Type(value = Touch.LeaveOut.class, name = "LEAVE_OUT"),
  @JsonSubTypes.Type(value = Touch.TakeIn.class, name = "TAKE_IN"),
  @JsonSubTypes.Type(value = Touch.Hold.class, name = "HOLD"),
  @JsonSubTypes.Type(value = Touch.Release.class, name = "RELEASE"),
  @JsonSubTypes.Type(value = Touch.SetPromise.class, name = "SET_PROMISE"),
  @JsonSubTypes.Type(value = Touch.SetWeight.class, name = "SET_WEIGHT")
})
public sealed interface Touch {
  /** The job it begins with. */
  String job();

  /**
   * Puts a job on a rig; one that is left out is planned with it.
   *
   * @param place 0 for the first; counted among the rig's other jobs, so 0 to their number
   * @param pin true to pin it to that rig and the place it ends up at
   */
  record Move(
      String job,
      String rig,
      int place,
      @JsonProperty(defaultValue = "false") @JsonSetter(nulls = Nulls.AS_EMPTY) boolean pin)
      implements Touch {
    /** A move without a pin. */
    public Move(String job, String rig, int place) {
      this(job, rig, place, false);
    }
  }

  /**
   * Two planned jobs change rigs and places.
   *
   * @param pin true to pin both where they end up
   */
  record Swap(
      String job,
      String other,
      @JsonProperty(defaultValue = "false") @JsonSetter(nulls = Nulls.AS_EMPTY) boolean pin)
      implements Touch {
    /** A swap without pins. */
    public Swap(String job, String other) {
      this(job, other, false);
    }
  }

  /** Takes a job out of the plan; no search puts it back until it is taken in again. */
  record LeaveOut(String job) implements Touch {}

  /**
   * Puts a job that is left out where it costs least.
   *
   * @param pin true to pin it there
   */
  record TakeIn(
      String job,
      @JsonProperty(defaultValue = "false") @JsonSetter(nulls = Nulls.AS_EMPTY) boolean pin)
      implements Touch {
    /** A job taken in without a pin. */
    public TakeIn(String job) {
      this(job, false);
    }
  }

  /**
   * Pins a planned job to the rig it is on.
   *
   * @param place true to pin it to its place in the order too
   * @param startsAt floor time at which its first step starts; null for any time
   */
  record Hold(String job, boolean place, @Nullable LocalDateTime startsAt) implements Touch {}

  /** Takes a job's pin off. */
  record Release(String job) implements Touch {}

  /**
   * Changes when a job's pictures are due.
   *
   * @param dueAt floor time; null for no promise
   * @param must true when being late breaks the plan
   */
  record SetPromise(String job, @Nullable LocalDateTime dueAt, boolean must) implements Touch {}

  /**
   * Changes how much a job counts when it is late or left out.
   *
   * @param weight 1 to 1000
   */
  record SetWeight(String job, int weight) implements Touch {}
}
