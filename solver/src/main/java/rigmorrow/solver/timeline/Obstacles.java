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
  private final Timeline timeline;

  Obstacles(CompiledBatch batch) {
    this.batch = batch;
    this.timeline = new Timeline(batch);
  }

  /** Sentences with figures; at least one. */
  List<String> of(int job) {
    int soonestEnd = CompiledBatch.NEVER;
    int soonestPictures = CompiledBatch.NEVER;
    boolean alone = false;
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      if (batch.fits(job, rig)) {
        Trace trace = alone(job, rig);
        if (trace.unloadEnd[job] <= batch.horizon) {
          soonestEnd = Math.min(soonestEnd, trace.unloadEnd[job]);
          soonestPictures = Math.min(soonestPictures, trace.captureEnd[job]);
        }
        alone |= timeline.hard() == 0;
      }
    }
    if (soonestEnd == CompiledBatch.NEVER) {
      return List.of(
          "No rig that can take it is open and staffed for long enough from "
              + time(batch.ready(job))
              + " on.");
    }
    if (soonestEnd > batch.leave[job]) {
      return List.of(
          "Its sample leaves at "
              + time(batch.leave[job])
              + "; with nothing else planned it would be off a rig at "
              + time(soonestEnd)
              + " at the soonest.");
    }
    if (batch.must[job] && soonestPictures > batch.due[job]) {
      return List.of(
          "Its must-promise is "
              + time(batch.due[job])
              + "; with nothing else planned its pictures would be taken at "
              + time(soonestPictures)
              + " at the soonest.");
    }
    return List.of(
        alone
            ? "It would fit alone, but the search found no place for it beside the others that keeps"
                + " every hard rule."
            : "Even with nothing else planned it would break a hard rule.");
  }

  /** The job decoded with nothing else planned. */
  private Trace alone(int job, int rig) {
    for (int other = 0; other < batch.rigCount(); other++) {
      timeline.setLength(other, 0);
    }
    timeline.sequence(rig)[0] = job;
    timeline.setLength(rig, 1);
    return timeline.trace();
  }

  private String time(int second) {
    return batch.clock.at(second).format(TIME);
  }
}
