package rigmorrow.solver.timeline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.explain.Wait;
import rigmorrow.model.floor.PlateRing;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.floor.Weights;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.time.Span;
import rigmorrow.model.work.ChangeoverModel;

/** Writes down one decode as a plan. Makes texts and lists, but no times of its own. */
public final class PlanWriter {
  private final CompiledBatch batch;
  private final Timeline timeline;
  private final ChangeoverModel changeovers;

  /**
   * @param batch that was decoded
   * @param timeline to decode with
   */
  public PlanWriter(CompiledBatch batch, Timeline timeline) {
    this.batch = batch;
    this.timeline = timeline;
    this.changeovers = new ChangeoverModel(batch.batch.floor());
  }

  /**
   * Decodes the sequences and writes the plan.
   *
   * @param sequences what to decode
   * @param origin how the plan was made
   */
  public Plan write(Sequences sequences, PlanOrigin origin) {
    sequences.decode(timeline);
    Trace trace = timeline.trace();
    List<RigPlan> rigs = new ArrayList<>();
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      List<PlannedJob> jobs = new ArrayList<>();
      for (int at = 0; at < timeline.length(rig); at++) {
        jobs.add(job(trace, rig, timeline.sequence(rig)[at]));
      }
      rigs.add(new RigPlan(batch.rigs.get(rig).id(), jobs));
    }
    List<LeftOut> leftOut = new ArrayList<>(batch.excluded);
    for (int job : sequences.backlog()) {
      leftOut.add(
          new LeftOut(batch.jobId(job), LeftOut.Cause.NO_ROOM, new Obstacles(batch).of(job)));
    }
    return new Plan(
        batch.batch.floor().name(),
        batch.clock.zone(),
        batch.clock.date(),
        batch.clock.days(),
        rigs,
        leftOut,
        figures(sequences.backlog()),
        origin);
  }

  /**
   * For what the rig waited on account of a job, in the timeline that was just decoded.
   *
   * @param rig number of the rig
   * @param place of the job on it, 0 for the first
   */
  public List<Wait> waits(int rig, int place) {
    Trace trace = timeline.trace();
    return waits(trace, new Waits(batch, timeline, trace), rig, place);
  }

  /** The same of every job that is planned, by its id. */
  public Map<String, List<Wait>> waits() {
    Trace trace = timeline.trace();
    Waits waits = new Waits(batch, timeline, trace);
    Map<String, List<Wait>> all = new HashMap<>();
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      for (int place = 0; place < timeline.length(rig); place++) {
        all.put(batch.jobId(timeline.sequence(rig)[place]), waits(trace, waits, rig, place));
      }
    }
    return all;
  }

  private List<Wait> waits(Trace trace, Waits waits, int rig, int place) {
    int before = place == 0 ? 0 : trace.unloadEnd[timeline.sequence(rig)[place - 1]];
    return waits.of(timeline.sequence(rig)[place], rig, before);
  }

  private PlannedJob job(Trace trace, int rig, int job) {
    List<ChangeoverStep> steps = new ArrayList<>();
    List<KitUse> uses = new ArrayList<>();
    Rig on = batch.rigs.get(rig);
    PlateRing ring = on.ring();
    List<String> needed = batch.jobWork(job, rig).kits();
    for (int kit = 0; kit < batch.kits.size(); kit++) {
      if (needed.contains(batch.kits.get(kit).id())) {
        String unit = batch.units.get(trace.unit[job][kit]);
        String from = batch.places.get(trace.unitFrom[job][kit]);
        uses.add(new KitUse(batch.kits.get(kit).id(), unit, from));
        if (trace.unitFrom[job][kit] != rig) {
          steps.add(changeovers.kitMove(batch.kits.get(kit), unit, from, on));
        }
      }
    }
    if (trace.ringServiced[job] && ring != null) {
      steps.add(changeovers.ringService(ring));
    }
    steps.addAll(timeline.setupSteps(rig, trace.stateBefore[job], job));
    Attended load =
        new Attended(
            new Span(trace.loadStart[job], trace.loadEnd[job]),
            names(trace.loadCrew[job], trace.loadLead[job]));
    boolean attended = batch.jobWork(job, rig).attendedCapture();
    return new PlannedJob(
        batch.jobs.get(job).id(),
        steps,
        changeover(trace, job, steps),
        trace.warmedUpAt[job],
        load,
        new Span(trace.captureStart[job], trace.captureEnd[job]),
        attended ? load.operators() : List.of(),
        new Attended(
            new Span(trace.unloadStart[job], trace.unloadEnd[job]),
            names(trace.unloadCrew[job], trace.unloadLead[job])),
        uses,
        lateSeconds(trace, job));
  }

  private @Nullable Attended changeover(Trace trace, int job, List<ChangeoverStep> steps) {
    if (steps.isEmpty()) {
      return null;
    }
    if (trace.changeoverStart[job] < 0) {
      // Steps without hands-on time need nobody.
      Span nothing = new Span(trace.loadStart[job], trace.loadStart[job]);
      return new Attended(nothing, List.of());
    }
    return new Attended(
        new Span(trace.changeoverStart[job], trace.changeoverEnd[job]),
        names(trace.changeoverCrew[job], trace.changeoverLead[job]));
  }

  private List<String> names(int crew, int lead) {
    List<String> names = new ArrayList<>();
    if (crew != 0) {
      names.add(batch.crew.get(lead).id());
    }
    for (int rest = crew & ~(crew == 0 ? 0 : 1 << lead); rest != 0; rest &= rest - 1) {
      names.add(batch.crew.get(Integer.numberOfTrailingZeros(rest)).id());
    }
    return names;
  }

  /**
   * What the timeline, just decoded, comes to.
   *
   * @param backlog numbers of the jobs that are in no sequence
   */
  public PlanFigures figures(List<Integer> backlog) {
    Trace trace = timeline.trace();
    Weights weights = batch.batch.floor().weights();
    int planned = 0;
    int lateJobs = 0;
    long lateSeconds = 0;
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      for (int at = 0; at < timeline.length(rig); at++) {
        int late = lateSeconds(trace, timeline.sequence(rig)[at]);
        planned++;
        lateJobs += late > 0 ? 1 : 0;
        lateSeconds += late;
      }
    }
    long leftOut = backlog.stream().mapToLong(batch::leftOutWeight).sum();
    int finishing = Math.max(0, timeline.finishedAt() - batch.firstOpening);
    return new PlanFigures(
        timeline.hard() + batch.pinnedAmong(backlog),
        leftOut + batch.excludedWeight,
        points(timeline.lateWeighted(), weights.latenessPerMinute()),
        points(timeline.changeoverSeconds(), weights.changeoverPerMinute()),
        points(finishing, weights.finishingPerMinute()),
        planned,
        backlog.size() + batch.excluded.size(),
        lateJobs,
        lateSeconds,
        timeline.changeoverSeconds(),
        timeline.finishedAt());
  }

  private int lateSeconds(Trace trace, int job) {
    return Math.max(0, trace.captureEnd[job] - batch.due[job]);
  }

  private static long points(long seconds, int perMinute) {
    return -Math.floorDiv(-seconds * perMinute, 60L);
  }
}
