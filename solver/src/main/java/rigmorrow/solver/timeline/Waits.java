package rigmorrow.solver.timeline;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.model.explain.Wait;
import rigmorrow.model.time.Span;

/** Reads from a trace for what a rig waited. */
final class Waits {
  private final CompiledBatch batch;
  private final Trace trace;
  private final List<Wait> waits = new ArrayList<>();

  Waits(CompiledBatch batch, Trace trace) {
    this.batch = batch;
    this.trace = trace;
  }

  /**
   * The waits of a job, in order.
   *
   * @param rigFree second from which its rig had nothing else to do
   */
  List<Wait> of(int job, int rigFree) {
    int ready = batch.ready(job);
    boolean pinned = batch.pinStart[job] > batch.release[job];
    Wait.Reason first = pinned ? Wait.Reason.PINNED_START : Wait.Reason.ARRIVAL;
    add(first, 0, rigFree, ready);
    boolean changeover = trace.changeoverStart[job] >= 0;
    int start = changeover ? trace.changeoverStart[job] : trace.loadStart[job];
    List<Trace.Refusal> mine =
        trace.refusals.stream().filter(refusal -> refusal.job() == job).toList();
    for (int i = 0; i < mine.size(); i++) {
      int until = i + 1 < mine.size() ? mine.get(i + 1).second() : start;
      add(mine.get(i).reason(), mine.get(i).kits(), mine.get(i).second(), until);
    }
    if (changeover) {
      add(Wait.Reason.CREW_TO_LOAD, 0, trace.changeoverEnd[job], trace.loadStart[job]);
    }
    add(Wait.Reason.WARM_UP, 0, trace.loadEnd[job], trace.captureStart[job]);
    add(Wait.Reason.CREW_TO_UNLOAD, 0, trace.captureEnd[job], trace.unloadStart[job]);
    return waits;
  }

  private void add(Wait.Reason reason, int kitBits, int from, int until) {
    if (until > from) {
      List<String> kits = new ArrayList<>();
      for (int rest = kitBits; rest != 0; rest &= rest - 1) {
        kits.add(batch.kits.get(Integer.numberOfTrailingZeros(rest)).id());
      }
      waits.add(new Wait(reason, kits, new Span(from, until)));
    }
  }
}
