package rigmorrow.solver.timeline;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/**
 * What keeps a job out of any plan, as far as the job and the rigs' hours alone tell: computed with
 * nobody and nothing else in the way and without a changeover.
 */
final class Obstacles {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("EEE uuuu-MM-dd HH:mm", Locale.ROOT);

  private final CompiledBatch batch;

  Obstacles(CompiledBatch batch) {
    this.batch = batch;
  }

  /** Sentences with figures; at least one. */
  List<String> of(int job) {
    int soonestEnd = CompiledBatch.NEVER;
    int soonestPictures = CompiledBatch.NEVER;
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      if (batch.fits(job, rig)) {
        int end = soonestEnd(job, rig);
        soonestEnd = Math.min(soonestEnd, end);
        int at = (job * batch.rigCount() + rig) * CompiledBatch.WORK_STRIDE;
        int unload = batch.work[at + CompiledBatch.UNLOAD_SECONDS];
        soonestPictures = Math.min(soonestPictures, end - unload);
      }
    }
    if (soonestEnd >= CompiledBatch.NEVER / 2) {
      return List.of(
          "No rig that can take it is open and staffed for long enough from "
              + time(batch.ready(job))
              + " on.");
    }
    if (soonestEnd > batch.leave[job]) {
      return List.of(
          "Its sample leaves at "
              + time(batch.leave[job])
              + "; with nothing else to do it would be off a rig at "
              + time(soonestEnd)
              + " at the soonest.");
    }
    if (batch.must[job] && soonestPictures > batch.due[job]) {
      return List.of(
          "Its must-promise is "
              + time(batch.due[job])
              + "; with nothing else to do its pictures would be taken at "
              + time(soonestPictures)
              + " at the soonest.");
    }
    return List.of(
        "It would fit alone, but the search found no place for it beside the others that keeps every"
            + " hard rule.");
  }

  private int soonestEnd(int job, int rig) {
    int[] hours = batch.rigHours[rig];
    int seconds = batch.plainSeconds(job, rig);
    for (int i = 0; i + 2 < hours.length; i += 2) {
      int start = Math.max(hours[i], batch.ready(job));
      if (start + seconds <= hours[i + 1]) {
        return start + seconds;
      }
    }
    return CompiledBatch.NEVER;
  }

  private String time(int second) {
    return batch.clock.at(second).format(TIME);
  }
}
