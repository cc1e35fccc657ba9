package rigmorrow.app.runsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rigmorrow.app.runsheet.text.Names;
import rigmorrow.app.runsheet.text.TimeText;
import rigmorrow.model.explain.Wait;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.time.Span;

/** Says which kit a rig waits for before a job, and where that is meanwhile. */
final class KitWaits {
  private final Map<String, List<Wait>> waits;
  private final Names names;
  private final TimeText times;

  /**
   * A time in which a rig waits for kit.
   *
   * @param text which kit, and what is known of where it is
   */
  record Told(Span span, String text) {}

  /**
   * @param waits for what rigs wait, by job
   */
  KitWaits(Map<String, List<Wait>> waits, Names names, TimeText times) {
    this.waits = waits;
    this.names = names;
    this.times = times;
  }

  /** The times in which its rig waits for kit before a job, in order. */
  List<Told> of(PlannedJob job) {
    List<Told> told = new ArrayList<>();
    for (Wait wait : Wait.joined(waits.getOrDefault(job.job(), List.of()))) {
      boolean both = wait.reason() == Wait.Reason.SAMPLE_AND_KIT;
      if (wait.forKit() || both) {
        List<String> pieces =
            job.kit().stream()
                .filter(use -> wait.kits().contains(use.kit()))
                .map(use -> piece(use, wait))
                .toList();
        told.add(
            new Told(
                wait.span(), String.join(", and ", pieces) + (both ? ", and its sample" : "")));
      }
    }
    return told;
  }

  /** The piece that the job takes stays where it comes from as long as it is used there. */
  private String piece(KitUse use, Wait wait) {
    String piece = names.kit(use.kit()) + " (" + use.unit() + ")";
    return wait.rigs().contains(use.from())
        ? piece
            + ", which cannot come off "
            + names.place(use.from())
            + " before "
            + times.at(wait.span().end())
        : piece;
  }
}
