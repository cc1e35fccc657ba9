package rigmorrow.app.runsheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rigmorrow.app.runsheet.text.Names;
import rigmorrow.app.runsheet.text.TimeText;
import rigmorrow.model.explain.Wait;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.time.Span;

/** Says which kit and sample a rig waits for before a job, and where the kit is meanwhile. */
final class KitWaits {
  private final Map<String, List<Wait>> waits;
  private final Names names;
  private final TimeText times;

  /**
   * The times in which a rig waits for one thing.
   *
   * @param spans in order, at least one
   * @param text which thing, and what is known of where it is
   */
  record Told(List<Span> spans, String text) {
    Told {
      spans = List.copyOf(spans);
    }
  }

  /**
   * @param waits for what rigs wait, by job
   */
  KitWaits(Map<String, List<Wait>> waits, Names names, TimeText times) {
    this.waits = waits;
    this.names = names;
    this.times = times;
  }

  /** What its rig waits for before a job: each kit once, and the sample once. */
  List<Told> of(PlannedJob job) {
    Map<List<String>, List<Wait>> byKit = new LinkedHashMap<>();
    for (Wait wait : Wait.joined(waits.getOrDefault(job.job(), List.of()))) {
      if (wait.forKit() || wait.reason() == Wait.Reason.SAMPLE) {
        byKit.computeIfAbsent(wait.kits(), kits -> new ArrayList<>()).add(wait);
      }
    }
    return byKit.values().stream()
        .map(all -> new Told(all.stream().map(Wait::span).toList(), text(job, all)))
        .toList();
  }

  private String text(PlannedJob job, List<Wait> all) {
    Wait last = all.get(all.size() - 1);
    return last.forKit()
        ? job.kit().stream()
            .filter(use -> last.kits().contains(use.kit()))
            .map(use -> piece(use, last))
            .collect(Collectors.joining(", and "))
        : "its sample";
  }

  /** The piece that the job takes stays where it comes from as long as it is used there. */
  private String piece(KitUse use, Wait last) {
    String piece = names.kit(use.kit()) + " (" + use.unit() + ")";
    return last.rigs().contains(use.from())
        ? piece
            + ", which cannot come off "
            + names.place(use.from())
            + " before "
            + times.at(last.span().end())
        : piece;
  }
}
