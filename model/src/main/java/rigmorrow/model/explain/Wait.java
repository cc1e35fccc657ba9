package rigmorrow.model.explain;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rigmorrow.model.time.Span;

/**
 * A time in which a job's rig had nothing to do but wait, as the decoder met it.
 *
 * @param reason what it waited for
 * @param kits ids of the kit that was not free or was taken off; empty unless kit is the reason
 * @param rigs ids of the other rigs that pieces of that kit were on meanwhile, in the order in
 *     which they came there; empty where none was on any, or kit is not the reason
 * @param span from and to, at least one second
 */
public record Wait(Reason reason, List<String> kits, List<String> rigs, Span span) {
  public Wait {
    kits = List.copyOf(kits);
    rigs = List.copyOf(rigs);
  }

  /** Waits of one job with those for the same kit made one that follow each other at once. */
  public static List<Wait> joined(List<Wait> waits) {
    List<Wait> joined = new ArrayList<>();
    for (Wait wait : waits) {
      int last = joined.size() - 1;
      if (last >= 0 && joined.get(last).goesOnIn(wait)) {
        joined.set(last, joined.get(last).and(wait));
      } else {
        joined.add(wait);
      }
    }
    return joined;
  }

  /** True where only kit is waited for, wherever it is. */
  public boolean forKit() {
    return reason == Reason.KIT || reason == Reason.KIT_ON_A_BUSY_RIG;
  }

  private boolean goesOnIn(Wait next) {
    return forKit() && next.forKit() && kits.equals(next.kits) && span.end() == next.span.start();
  }

  /** What was waited for last says what the wait ended with. */
  private Wait and(Wait next) {
    Set<String> all = new LinkedHashSet<>(rigs);
    all.addAll(next.rigs);
    return new Wait(next.reason, kits, List.copyOf(all), new Span(span.start(), next.span.end()));
  }

  /** What a rig waits for. */
  public enum Reason {
    /** The sample to arrive. */
    ARRIVAL,
    /** The start that is pinned. */
    PINNED_START,
    /** The sample, which another job had or was about to take, its people being on their way. */
    SAMPLE,
    /** Kit, which other jobs had or were about to take, their people being on their way. */
    KIT,
    /** Kit that nobody used, hanging on rigs that were not between two jobs to take it off. */
    KIT_ON_A_BUSY_RIG,
    /** Kit to be taken off the rig for another one. */
    KIT_TAKEN_OFF,
    /** Both the sample and kit. */
    SAMPLE_AND_KIT,
    /** People to begin the changeover, or the loading where there is none. */
    CREW_TO_START,
    /** Hours of the rig that are long enough for the whole job. */
    RIG_HOURS,
    /** People to load. */
    CREW_TO_LOAD,
    /** The unattended end of the changeover, such as a warm-up. */
    WARM_UP,
    /** People to unload. */
    CREW_TO_UNLOAD
  }
}
