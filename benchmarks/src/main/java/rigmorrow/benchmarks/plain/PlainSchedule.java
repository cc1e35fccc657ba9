package rigmorrow.benchmarks.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactCollectionProperty;
import org.optaplanner.core.api.domain.solution.ProblemFactProperty;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/** The planning solution as a newcomer to the library would write it. */
@PlanningSolution
public class PlainSchedule {
  @ProblemFactProperty private @Nullable Decoder decoder;

  @ValueRangeProvider(id = "jobs")
  @ProblemFactCollectionProperty
  private List<PlainJob> jobs = List.of();

  @PlanningEntityCollectionProperty private List<PlainQueue> queues = List.of();

  @PlanningScore private @Nullable HardMediumSoftLongScore score;

  /** The batch and a decoder of one thread's own; shared by all copies of a schedule. */
  public record Decoder(CompiledBatch batch, Timeline timeline) {}

  /** For the planning library. */
  public PlainSchedule() {}

  private PlainSchedule(Decoder decoder, List<PlainJob> jobs, List<PlainQueue> queues) {
    this.decoder = decoder;
    this.jobs = jobs;
    this.queues = queues;
  }

  /** A schedule of some sequences, with a decoder of its own. */
  static PlainSchedule of(CompiledBatch batch, Sequences from) {
    List<PlainJob> jobs = IntStream.range(0, batch.jobCount()).mapToObj(PlainJob::new).toList();
    List<PlainQueue> queues = new ArrayList<>();
    for (List<Integer> rig : from.byRig()) {
      queues.add(new PlainQueue(rig.stream().map(jobs::get).toList()));
    }
    queues.add(new PlainQueue(from.backlog().stream().map(jobs::get).toList()));
    return new PlainSchedule(new Decoder(batch, new Timeline(batch)), jobs, queues);
  }

  /** The decisions with the score they were given. */
  Sequences sequences() {
    HardMediumSoftLongScore known = java.util.Objects.requireNonNull(score);
    List<List<Integer>> byRig = new ArrayList<>();
    for (PlainQueue queue : queues) {
      byRig.add(queue.getJobs().stream().map(PlainJob::number).toList());
    }
    List<Integer> backlog = byRig.remove(byRig.size() - 1);
    return new Sequences(
        byRig, backlog, -known.hardScore(), -known.mediumScore(), -known.softScore());
  }

  /** Decodes the queues as they stand. */
  HardMediumSoftLongScore decode() {
    Decoder with = java.util.Objects.requireNonNull(decoder);
    CompiledBatch batch = with.batch;
    Timeline timeline = with.timeline;
    int rigs = batch.rigCount();
    for (int rig = 0; rig < rigs; rig++) {
      List<PlainJob> queue = queues.get(rig).getJobs();
      int[] sequence = timeline.sequence(rig);
      for (int at = 0; at < queue.size(); at++) {
        sequence[at] = queue.get(at).number();
      }
      timeline.setLength(rig, queue.size());
    }
    timeline.decode();
    long hard = timeline.hard() + batch.excludedPins();
    long medium = 0;
    for (PlainJob job : queues.get(rigs).getJobs()) {
      medium += batch.leftOutWeight(job.number());
      hard += batch.pinnedRig(job.number()) >= 0 ? 1 : 0;
    }
    return HardMediumSoftLongScore.of(-hard, -medium, -batch.softSeconds(timeline));
  }

  /** What the score is worked out with. */
  public @Nullable Decoder getDecoder() {
    return decoder;
  }

  /** Queues in rig order, what is left out last. */
  public List<PlainQueue> getQueues() {
    return queues;
  }

  /** Every job that can be planned. */
  public List<PlainJob> getJobs() {
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
}
