package rigmorrow.solver.search;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactCollectionProperty;
import org.optaplanner.core.api.domain.solution.cloner.SolutionCloner;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.score.director.ScoreDirector;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/** The planning solution: every rig's queue, and the decoder that scores them. */
@PlanningSolution(solutionCloner = FloorSchedule.QueueCloner.class)
public class FloorSchedule {
  private CompiledBatch batch;
  private Timeline timeline;
  private Neighbours neighbours;

  @ValueRangeProvider(id = "jobs")
  @ProblemFactCollectionProperty
  private List<QueuedJob> jobs;

  @PlanningEntityCollectionProperty private List<RigQueue> queues;

  @PlanningScore private @Nullable HardMediumSoftLongScore score;

  private FloorSchedule(
      CompiledBatch batch,
      Timeline timeline,
      Neighbours neighbours,
      List<QueuedJob> jobs,
      List<RigQueue> queues) {
    this.batch = batch;
    this.timeline = timeline;
    this.neighbours = neighbours;
    this.jobs = jobs;
    this.queues = queues;
  }

  /** A schedule of some sequences, with a decoder of its own for one thread. */
  static FloorSchedule of(CompiledBatch batch, Sequences sequences) {
    List<QueuedJob> jobs = new ArrayList<>();
    for (int job = 0; job < batch.jobCount(); job++) {
      jobs.add(new QueuedJob(job));
    }
    List<RigQueue> queues = new ArrayList<>();
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      queues.add(new RigQueue(rig, sequences.byRig().get(rig).stream().map(jobs::get).toList()));
    }
    queues.add(
        new RigQueue(batch.rigCount(), sequences.backlog().stream().map(jobs::get).toList()));
    Timeline timeline = Timeline.forChanges(batch);
    return new FloorSchedule(batch, timeline, new Neighbours(batch, timeline), jobs, queues);
  }

  /** The decisions, decoded and scored. */
  Sequences sequences() {
    decode();
    return Sequences.of(batch, timeline);
  }

  /** Takes over a plan's sequences, telling the planning library. */
  void write(ScoreDirector<FloorSchedule> director, Sequences plan) {
    for (RigQueue queue : queues) {
      List<Integer> wanted =
          queue.rig() == batch.rigCount() ? plan.backlog() : plan.byRig().get(queue.rig());
      List<QueuedJob> kept = queue.getJobs();
      director.beforeListVariableChanged(queue, RigQueue.JOBS, 0, kept.size());
      kept.clear();
      wanted.forEach(job -> kept.add(jobs.get(job)));
      director.afterListVariableChanged(queue, RigQueue.JOBS, 0, kept.size());
    }
    director.triggerVariableListeners();
  }

  /** Decodes the queues as they stand. */
  HardMediumSoftLongScore decode() {
    int rigs = batch.rigCount();
    for (int rig = 0; rig < rigs; rig++) {
      List<QueuedJob> queue = queues.get(rig).getJobs();
      int[] sequence = timeline.sequence(rig);
      int length = queue.size();
      for (int at = 0; at < length; at++) {
        sequence[at] = queue.get(at).number();
      }
      timeline.setLength(rig, length);
    }
    timeline.decode();
    long hard = timeline.hard() + batch.excludedPins();
    long medium = 0;
    List<QueuedJob> backlog = queues.get(rigs).getJobs();
    for (int at = 0; at < backlog.size(); at++) {
      int job = backlog.get(at).number();
      medium += batch.leftOutWeight(job);
      hard += batch.pinnedRig(job) >= 0 ? 1 : 0;
    }
    return HardMediumSoftLongScore.of(-hard, -medium, -batch.softSeconds(timeline));
  }

  CompiledBatch batch() {
    return batch;
  }

  Timeline timeline() {
    return timeline;
  }

  Neighbours neighbours() {
    return neighbours;
  }

  /** Queues in rig order, the backlog last. */
  public List<RigQueue> getQueues() {
    return queues;
  }

  /** Every job that can be planned. */
  public List<QueuedJob> getJobs() {
    return jobs;
  }

  /** Score of the queues; null until the first decode. */
  public @Nullable HardMediumSoftLongScore getScore() {
    return score;
  }

  /** For the planning library. */
  public void setScore(@Nullable HardMediumSoftLongScore score) {
    this.score = score;
  }

  /** Copies the queues and nothing else: everything else is given. */
  public static final class QueueCloner implements SolutionCloner<FloorSchedule> {
    @Override
    public FloorSchedule cloneSolution(FloorSchedule original) {
      List<RigQueue> queues = new ArrayList<>(original.queues.size());
      for (RigQueue queue : original.queues) {
        queues.add(new RigQueue(queue.rig(), queue.getJobs()));
      }
      FloorSchedule copy =
          new FloorSchedule(
              original.batch, original.timeline, original.neighbours, original.jobs, queues);
      copy.score = original.score;
      return copy;
    }
  }
}
