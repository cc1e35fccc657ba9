package rigmorrow.solver.timeline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rigmorrow.model.explain.Wait;
import rigmorrow.model.time.Span;

/** Reads from a trace for what a rig waited. */
final class Waits {
  private final CompiledBatch batch;
  private final Trace trace;

  /** Every time that a job took a piece of kit to its rig or kept it there, in order of time. */
  private final List<Arrival> arrivals = new ArrayList<>();

  private record Arrival(int second, int unit, int rig) {}

  /**
   * @param timeline that was decoded
   * @param trace of that decode
   */
  Waits(CompiledBatch batch, Timeline timeline, Trace trace) {
    this.batch = batch;
    this.trace = trace;
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      for (int at = 0; at < timeline.length(rig); at++) {
        int job = timeline.sequence(rig)[at];
        List<String> needed = batch.jobWork(job, rig).kits();
        for (int kit = 0; kit < batch.kits.size(); kit++) {
          if (needed.contains(batch.kits.get(kit).id())) {
            arrivals.add(new Arrival(start(job), trace.unit[job][kit], rig));
          }
        }
      }
    }
    arrivals.sort(Comparator.comparingInt(Arrival::second));
  }

  /**
   * The waits of a job, in order.
   *
   * @param rig number of its rig
   * @param rigFree second from which its rig had nothing else to do
   */
  List<Wait> of(int job, int rig, int rigFree) {
    List<Wait> waits = new ArrayList<>();
    int ready = batch.ready(job);
    boolean pinned = batch.pinStart[job] > batch.release[job];
    Wait.Reason first = pinned ? Wait.Reason.PINNED_START : Wait.Reason.ARRIVAL;
    add(waits, first, rigFree, ready);
    List<Trace.Refusal> mine =
        trace.refusals.stream().filter(refusal -> refusal.job() == job).toList();
    for (int i = 0; i < mine.size(); i++) {
      int until = i + 1 < mine.size() ? mine.get(i + 1).second() : start(job);
      add(waits, mine.get(i), rig, until);
    }
    if (trace.changeoverStart[job] >= 0) {
      add(waits, Wait.Reason.CREW_TO_LOAD, trace.changeoverEnd[job], trace.loadStart[job]);
    }
    add(waits, Wait.Reason.WARM_UP, trace.loadEnd[job], trace.captureStart[job]);
    add(waits, Wait.Reason.CREW_TO_UNLOAD, trace.captureEnd[job], trace.unloadStart[job]);
    return waits;
  }

  private int start(int job) {
    return trace.changeoverStart[job] >= 0 ? trace.changeoverStart[job] : trace.loadStart[job];
  }

  private static void add(List<Wait> waits, Wait.Reason reason, int from, int until) {
    if (until > from) {
      waits.add(new Wait(reason, new Span(from, until)));
    }
  }

  private void add(List<Wait> waits, Trace.Refusal refusal, int rig, int until) {
    if (until > refusal.second()) {
      Span span = new Span(refusal.second(), until);
      Map<String, List<String>> rigsByKit = new LinkedHashMap<>();
      for (int rest = refusal.kits(); rest != 0; rest &= rest - 1) {
        int kit = Integer.numberOfTrailingZeros(rest);
        Set<String> rigs = new LinkedHashSet<>();
        for (int unit = batch.kitUnits[kit]; unit < batch.kitUnits[kit + 1]; unit++) {
          rigs.addAll(rigsOf(unit, span));
        }
        rigs.remove(batch.rigs.get(rig).id());
        rigsByKit.put(batch.kits.get(kit).id(), List.copyOf(rigs));
      }
      waits.add(new Wait(refusal.reason(), rigsByKit, span));
    }
  }

  /** The rigs that a piece was on in a time, from the first to the last. */
  private List<String> rigsOf(int unit, Span span) {
    int place = batch.unitPlace[unit];
    Set<Integer> seen = new LinkedHashSet<>();
    for (Arrival arrival : arrivals) {
      if (arrival.second >= span.end()) {
        break;
      }
      if (arrival.unit == unit) {
        if (arrival.second > span.start()) {
          seen.add(place);
        }
        place = arrival.rig;
      }
    }
    seen.add(place);
    return seen.stream().filter(at -> at < batch.rigCount()).map(batch.places::get).toList();
  }
}
