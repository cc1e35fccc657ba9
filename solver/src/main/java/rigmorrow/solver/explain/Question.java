package rigmorrow.solver.explain;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.explain.Change;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.solver.hand.Timed;
import rigmorrow.solver.hand.Trial;
import rigmorrow.solver.timeline.JobFacts;

/** One job that is asked about, with what is decoded to answer. */
final class Question {
  private final Batch batch;
  private final Orders orders;
  private final ShotJob job;
  private final KnownFacts facts;
  private final Trial trial;
  private final Timed now;
  private final Map<Change, Trial> changed = new HashMap<>();
  private final Map<String, ShotJob> jobs = new HashMap<>();
  private final Set<String> fixed;

  Question(Batch batch, Orders orders, ShotJob job, KnownFacts facts) {
    this.batch = batch;
    this.orders = orders;
    this.job = job;
    this.facts = facts;
    this.trial = new Trial(batch, facts.asking(job.id(), null));
    this.now = trial.decode(orders);
    this.fixed =
        batch.shotList().pins().stream()
            .filter(pin -> pin.state() != PinState.PLANNED)
            .map(Pin::job)
            .collect(Collectors.toUnmodifiableSet());
    batch.shotList().jobs().forEach(one -> jobs.put(one.id(), one));
  }

  Batch batch() {
    return batch;
  }

  Orders orders() {
    return orders;
  }

  ShotJob job() {
    return job;
  }

  /** Any job of the batch by its id. */
  ShotJob job(String id) {
    return java.util.Objects.requireNonNull(jobs.get(id));
  }

  /** The batch as it is. */
  Trial trial() {
    return trial;
  }

  /** The plan as it is. */
  Timed now() {
    return now;
  }

  /** What every rig says to the job. */
  JobFit fit() {
    return facts.everywhere(job);
  }

  KnownFacts facts() {
    return facts;
  }

  /** What the job is pinned to; null when it is not. */
  @Nullable Pin pin() {
    return pin(job.id());
  }

  /** What any job is pinned to; null when it is not. */
  @Nullable Pin pin(String id) {
    return batch.shotList().pins().stream()
        .filter(pin -> pin.job().equals(id))
        .findFirst()
        .orElse(null);
  }

  /** Ids of the jobs that are running or done. */
  Set<String> fixed() {
    return fixed;
  }

  /** The batch as if the job were not pinned. */
  Trial unpinned() {
    return with(Change.of(Change.Kind.NOT_PINNED, job.id()));
  }

  /** The batch with a change; the batch as it is for a change of orders. */
  Trial with(Change change) {
    Trial known = changed.get(change);
    if (known != null) {
      return known;
    }
    Batch other = new ChangedBatch(batch, job.id()).with(change);
    Trial made = trial;
    if (change.kind() == Change.Kind.NO_SETUP) {
      made = new Trial(batch, new NoSetup(facts.asking(job.id(), null), job.id()));
    } else if (!other.equals(batch)) {
      made = on(other);
    }
    changed.put(change, made);
    return made;
  }

  /** A changed batch. */
  Trial on(Batch other) {
    boolean sameFloor = other.floor().equals(batch.floor());
    JobFacts known = facts.asking(job.id(), sameFloor ? null : other.floor());
    return new Trial(other, known);
  }
}
