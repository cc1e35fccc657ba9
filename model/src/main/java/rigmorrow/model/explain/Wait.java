package rigmorrow.model.explain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rigmorrow.model.time.Span;

/**
 * A time in which a job's rig had nothing to do but wait, as the decoder met it.
 *
 * @param reason what it waited for
 * @param rigsByKit by id of each kit that was not free or was taken off, ids of the other rigs that
 *     pieces of it were on meanwhile, in the order in which they came there; empty unless kit is
 *     the reason. Its order is kept and makes no difference
 * @param span from and to, at least one second
 */
public record Wait(Reason reason, Map<String, List<String>> rigsByKit, Span span) {
  public Wait {
    Map<String, List<String>> copy = new LinkedHashMap<>();
    rigsByKit.forEach((kit, rigs) -> copy.put(kit, List.copyOf(rigs)));
    rigsByKit = Collections.unmodifiableMap(copy);
  }

  /** A wait for something else than kit. */
  public Wait(Reason reason, Span span) {
    this(reason, Map.of(), span);
  }

  /** Ids of the kit that was not free or was taken off. */
  public List<String> kits() {
    return List.copyOf(rigsByKit.keySet());
  }

  /** Ids of the other rigs that pieces of that kit were on meanwhile, each once. */
  public List<String> rigs() {
    Set<String> rigs = new LinkedHashSet<>();
    rigsByKit.values().forEach(rigs::addAll);
    return List.copyOf(rigs);
  }

  /**
   * Waits of one job told anew by what was waited for: each kit by itself and the sample by itself,
   * so that they may overlap. What follows at once is one wait. A rig that waits is asked again
   * whenever anything becomes free, so that waits of a decode end where nothing ended for the job.
   *
   * @param waits in order of time
   * @return in the order in which they began, of those that began together kit first
   */
  public static List<Wait> joined(List<Wait> waits) {
    List<Wait> joined = new ArrayList<>();
    for (Wait wait : waits) {
      for (Wait part : wait.parts()) {
        int before = joined.size() - 1;
        while (before >= 0 && !joined.get(before).goesOnIn(part)) {
          before--;
        }
        if (before >= 0) {
          joined.set(before, joined.get(before).and(part));
        } else {
          joined.add(part);
        }
      }
    }
    return joined;
  }

  /** True where only kit is waited for, wherever it is. */
  public boolean forKit() {
    return reason == Reason.KIT || reason == Reason.KIT_ON_A_BUSY_RIG;
  }

  private List<Wait> parts() {
    boolean both = reason == Reason.SAMPLE_AND_KIT;
    if (!both && rigsByKit.isEmpty()) {
      return List.of(this);
    }
    List<Wait> parts = new ArrayList<>();
    Reason alone = both ? Reason.KIT : reason;
    rigsByKit.forEach((kit, rigs) -> parts.add(new Wait(alone, Map.of(kit, rigs), span)));
    if (both) {
      parts.add(new Wait(Reason.SAMPLE, span));
    }
    return parts;
  }

  private boolean goesOnIn(Wait next) {
    boolean same = reason == next.reason || (forKit() && next.forKit());
    return same
        && rigsByKit.keySet().equals(next.rigsByKit.keySet())
        && span.end() == next.span.start();
  }

  /** What was waited for last says what the wait ended with. */
  private Wait and(Wait next) {
    Map<String, List<String>> all = new LinkedHashMap<>();
    rigsByKit.forEach(
        (kit, rigs) -> {
          Set<String> both = new LinkedHashSet<>(rigs);
          both.addAll(next.rigsByKit.getOrDefault(kit, List.of()));
          all.put(kit, List.copyOf(both));
        });
    return new Wait(next.reason, all, new Span(span.start(), next.span.end()));
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
