package rigmorrow.model.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.time.Span;

/**
 * One job with its times. Its parts follow each other: changeover, load, capture, unload; the rig
 * may wait for a person between them.
 *
 * @param job id of the job
 * @param steps of the changeover: kit moves, plate-ring service, setup; empty for none
 * @param changeover when and by whom; null when there is nothing to do
 * @param warmedUpAt second from which the rig is ready for capture after the changeover's
 *     unattended tail; the changeover's end where there is no tail
 * @param load placing and aligning the item
 * @param capture taking the pictures
 * @param captureOperators who stays during capture; empty when it runs unattended
 * @param unload taking the item off
 * @param kit pieces used
 * @param lateSeconds after the promise, 0 when kept or none given
 */
public record PlannedJob(
    String job,
    List<ChangeoverStep> steps,
    @Nullable Attended changeover,
    int warmedUpAt,
    Attended load,
    Span capture,
    List<String> captureOperators,
    Attended unload,
    List<KitUse> kit,
    int lateSeconds) {
  public PlannedJob {
    steps = List.copyOf(steps);
    captureOperators = List.copyOf(captureOperators);
    kit = List.copyOf(kit);
  }

  /** From the first step to the end of unloading: how long the rig, kit and sample are taken. */
  public Span whole() {
    int start = changeover == null ? load.span().start() : changeover.span().start();
    return new Span(start, unload.span().end());
  }
}
