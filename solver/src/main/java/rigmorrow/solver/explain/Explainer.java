package rigmorrow.solver.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.explain.Change;
import rigmorrow.model.explain.Explanation;
import rigmorrow.model.explain.IfThen;
import rigmorrow.model.explain.JobTimes;
import rigmorrow.model.explain.Move;
import rigmorrow.model.explain.RigAnswer;
import rigmorrow.model.explain.Trouble;
import rigmorrow.model.explain.Wait;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.solver.hand.Timed;
import rigmorrow.solver.hand.Trial;

/**
 * Explains a plan job by job. Every claim is a decode: of the plan's orders with the job elsewhere,
 * or of the same orders with one thing changed. One instance may be asked any number of times, by
 * one thread at a time.
 */
public final class Explainer {
  /** Places to try times jobs to decode for each: a few seconds. */
  private static final long MOST_JOBS_DECODED = 30_000_000;

  /** What must be in time, then what counts most. */
  private static final Comparator<ShotJob> FIRST_TO_ASK =
      Comparator.comparing((ShotJob job) -> !mustBeInTime(job)).thenComparing(job -> -job.weight());

  private final Batch batch;
  private final Plan plan;
  private final Orders orders;
  private final KnownFacts facts;

  /**
   * @param batch that was planned
   * @param plan of it, whoever made it; its orders count, its times are decoded again
   * @throws IllegalArgumentException when the plan is of another floor, shot list or day, puts a
   *     job on a rig that cannot take it, or one that is left out by hand on any
   */
  public Explainer(Batch batch, Plan plan) {
    this.batch = batch;
    this.plan = plan;
    this.orders = Orders.of(batch, plan);
    this.facts = new KnownFacts(batch.floor(), orders);
    refuseHeldBack();
    refuseMisfits();
  }

  /**
   * Answers for one job.
   *
   * @throws IllegalArgumentException when the batch has no such job
   */
  public Explanation explain(String id) {
    ShotJob job =
        batch.shotList().jobs().stream()
            .filter(one -> one.id().equals(id))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("the shot list has no job " + id));
    Question question = question(job);
    int rig = orders.rigOf(id);
    JobFit fit = question.fit();
    List<RigAnswer> rigs = new RigAnswers(question).all();
    JobTimes times = rig < 0 ? null : question.now().times(id);
    List<Wait> waits = rig < 0 ? List.of() : question.trial().waits(orders, id);
    return new Explanation(
        job,
        status(job, rig, fit),
        question.now().differing(plan),
        new RulesOf(question, rig).rules(),
        fit.unmeasured(),
        question.now().cost(),
        times,
        neighbour(rig, id, -1),
        neighbour(rig, id, 1),
        waits,
        rigs,
        changes(question, rig, fit, rigs));
  }

  /** A job that is held back is in no plan of the batch, so that nothing could be decoded. */
  private void refuseHeldBack() {
    String wrong =
        batch.shotList().heldBack().stream()
            .filter(id -> orders.rigOf(id) >= 0)
            .collect(Collectors.joining(", "));
    if (!wrong.isEmpty()) {
      throw new IllegalArgumentException("plan has jobs that are left out by hand: " + wrong);
    }
  }

  /** About the batch as it is; a job that is held back is asked about as if it were taken in. */
  private Question question(ShotJob job) {
    List<String> others =
        batch.shotList().heldBack().stream().filter(id -> !id.equals(job.id())).toList();
    Batch free = new Batch(batch.floor(), batch.shotList().withHeldBack(others));
    return new Question(free, orders, job, facts);
  }

  /** The decoder can make nothing of a job on a rig that cannot take it. */
  private void refuseMisfits() {
    String wrong =
        batch.shotList().jobs().stream()
            .filter(job -> orders.rigOf(job.id()) >= 0 && !facts.fit(job).fitsSomewhere())
            .map(job -> job.id() + " on " + rigId(orders.rigOf(job.id())))
            .collect(Collectors.joining(", "));
    if (!wrong.isEmpty()) {
      throw new IllegalArgumentException("plan has jobs on rigs that cannot take them: " + wrong);
    }
  }

  private String rigId(int rig) {
    return batch.floor().rigs().get(rig).id();
  }

  /** Where there is room for a job that is left out, nothing has to change but the plan. */
  private static List<IfThen> changes(
      Question question, int rig, JobFit fit, List<RigAnswer> rigs) {
    if (rig >= 0) {
      return new PlannedChanges(question).all();
    }
    Move best = RigAnswers.cheapest(rigs);
    boolean room = best != null && best.cost().hard() <= question.now().cost().hard();
    return room || !fit.fitsSomewhere() ? List.of() : new LeftOutChanges(question).all();
  }

  /**
   * Every job that is late or left out, in shot list order. Where they are very many, only those
   * that matter most have their places tried.
   */
  public List<Trouble> troubles() {
    return troubles(MOST_JOBS_DECODED);
  }

  /**
   * @param mostJobsDecoded no job more is asked about when so many were decoded, over all places
   */
  List<Trouble> troubles(long mostJobsDecoded) {
    Timed now = new Trial(batch, facts).decode(orders);
    List<ShotJob> inTrouble = new ArrayList<>();
    for (ShotJob job : batch.shotList().jobs()) {
      if (orders.rigOf(job.id()) < 0 || now.times(job.id()).lateSeconds() > 0) {
        inTrouble.add(job);
      }
    }
    Map<String, Trouble> known = new HashMap<>();
    long left = mostJobsDecoded / Math.max(1, batch.shotList().jobs().size());
    for (ShotJob job : inTrouble.stream().sorted(FIRST_TO_ASK).toList()) {
      int rig = orders.rigOf(job.id());
      Trouble trouble =
          left > 0
              ? trouble(job, rig, rig < 0 ? null : now.times(job.id()))
              : unasked(job, rig, now);
      left -= trouble.placesTried();
      known.put(job.id(), trouble);
    }
    return inTrouble.stream().map(job -> known.get(job.id())).toList();
  }

  private Trouble unasked(ShotJob job, int rig, Timed now) {
    JobTimes times = rig < 0 ? null : now.times(job.id());
    Explanation.Status status = status(job, rig, question(job).fit());
    return new Trouble(job, status, times, false, null, null, 0);
  }

  private Trouble trouble(ShotJob job, int rig, @Nullable JobTimes times) {
    Question question = question(job);
    List<RigAnswer> rigs = new RigAnswers(question).all();
    int tried = rigs.stream().mapToInt(RigAnswer::placesTried).sum();
    if (rig < 0) {
      Explanation.Status status = status(job, rig, question.fit());
      return new Trouble(job, status, null, true, null, RigAnswers.cheapest(rigs), tried);
    }
    IfThen soonest =
        new PlannedChanges(question)
            .all().stream()
                .filter(IfThen::helps)
                .filter(one -> one.change().kind() != Change.Kind.ALONE)
                .filter(one -> one.change().kind() != Change.Kind.FIRST_ON_RIG)
                .findFirst()
                .orElse(null);
    Move helpful = RigAnswers.helpful(rigs, question.now(), job.id());
    return new Trouble(job, Explanation.Status.PLANNED, times, true, soonest, helpful, tried);
  }

  private static boolean mustBeInTime(ShotJob job) {
    return job.promise() != null && job.promise().must();
  }

  private Explanation.Status status(ShotJob job, int rig, JobFit fit) {
    if (rig >= 0) {
      return Explanation.Status.PLANNED;
    }
    if (fit.needsMeasuring()) {
      return Explanation.Status.NEEDS_MEASURING;
    }
    if (!fit.fitsSomewhere()) {
      return Explanation.Status.FITS_NO_RIG;
    }
    return batch.shotList().heldBack().contains(job.id())
        ? Explanation.Status.HELD_BACK
        : Explanation.Status.LEFT_OUT;
  }

  private @Nullable String neighbour(int rig, String job, int step) {
    List<String> jobs = rig < 0 ? List.of() : orders.byRig().get(rig);
    int place = jobs.indexOf(job) + step;
    return place < 0 || place >= jobs.size() ? null : jobs.get(place);
  }
}
