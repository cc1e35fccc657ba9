package rigmorrow.data.shotjson;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.json.Cursor;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;

/** Reads pins: decisions and facts that are taken as given. */
final class PinReader {
  private final Set<String> rigs;
  private final Set<String> jobs;
  private final @Nullable LocalDate planDate;
  private final Set<String> pinnedJobs = new HashSet<>();
  private final Set<String> takenPlaces = new HashSet<>();

  /**
   * @param planDate the plan's first day, null when it could not be read
   */
  PinReader(Floor floor, Set<String> jobs, @Nullable LocalDate planDate) {
    this.rigs =
        floor.rigs().stream().map(Rig::id).collect(Collectors.toCollection(LinkedHashSet::new));
    this.jobs = jobs;
    this.planDate = planDate;
  }

  List<Pin> pins(Cursor list) {
    return list.list("pins", this::pin);
  }

  private Pin pin(Cursor pin) {
    String job = pin.get().reference("job", jobs, "a job of this list");
    if (!job.equals(Cursor.NO_TEXT) && !pinnedJobs.add(job)) {
      pin.refuse("job", "a job that is not pinned yet");
    }
    String rig = pin.get().reference("rig", rigs, "a rig");
    Integer place = pin.get().wholeOrNull("place");
    if (place != null
        && pin.sound("place")
        && !rig.equals(Cursor.NO_TEXT)
        && !takenPlaces.add(rig + " " + place)) {
      pin.refuse("place", "a place of " + rig + " that no other job is pinned to");
    }
    LocalDateTime startsAt = startsAt(pin);
    return new Pin(job, rig, place, startsAt, pin.get().constant("state", PinState.class));
  }

  private @Nullable LocalDateTime startsAt(Cursor pin) {
    LocalDateTime startsAt = pin.get().dateTimeOrNull("startsAt");
    if (startsAt != null && pin.sound("startsAt")) {
      ShotJsonReader.nearPlan(pin, "startsAt", startsAt, planDate);
    }
    return startsAt;
  }
}
