package rigmorrow.data.demo;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.setup.Changeover;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;
import rigmorrow.model.time.WorkingHours;
import rigmorrow.model.work.ChangeoverModel;
import rigmorrow.model.work.JobWork;
import rigmorrow.model.work.WorkModel;

/**
 * What a batch asks of crew and rigs, without waiting: every job goes to the rig with the least
 * work among those that fit, then each rig's jobs are put in an order and the changeovers summed.
 */
final class DemoLoads {
  private final Batch batch;
  private final WorkModel work;
  private final ChangeoverModel changeovers;
  private final Map<String, List<JobWork>> byRig = new HashMap<>();
  private final Map<String, Integer> rigSeconds = new HashMap<>();
  private final Map<String, ShotJob> jobs = new HashMap<>();

  DemoLoads(Batch batch) {
    this.batch = batch;
    this.work = new WorkModel(batch.floor());
    this.changeovers = new ChangeoverModel(batch.floor());
    FitCheck check = new FitCheck(batch.floor());
    Map<ShotJob, List<Rig>> fitting = new HashMap<>();
    for (ShotJob job : batch.shotList().jobs()) {
      jobs.put(job.id(), job);
      fitting.put(
          job, batch.floor().rigs().stream().filter(rig -> check.of(job, rig).fits()).toList());
    }
    batch.shotList().jobs().stream()
        .sorted(
            Comparator.<ShotJob>comparingInt(job -> fitting.get(job).size())
                .thenComparing(ShotJob::id))
        .forEach(job -> assign(job, fitting.get(job)));
  }

  private void assign(ShotJob job, List<Rig> rigs) {
    JobWork best =
        rigs.stream()
            .map(rig -> work.of(job, rig))
            .min(
                Comparator.comparingInt(
                    each -> rigSeconds.getOrDefault(each.rig(), 0) + each.captureSeconds()))
            .orElseThrow();
    byRig.computeIfAbsent(best.rig(), key -> new ArrayList<>()).add(best);
    rigSeconds.merge(best.rig(), busySeconds(best), Integer::sum);
  }

  private static int busySeconds(JobWork job) {
    return job.load().seconds() + job.captureSeconds() + job.unload().seconds();
  }

  List<Rig> rigs() {
    return batch.floor().rigs();
  }

  /** Load, capture and unload on one rig. */
  int rigBusySeconds(String rig) {
    return rigSeconds.getOrDefault(rig, 0);
  }

  List<JobWork> all() {
    return byRig.values().stream().flatMap(List::stream).toList();
  }

  /** Person-seconds of loading, unloading and attended capture. */
  int handlingSeconds() {
    return all().stream()
        .mapToInt(
            job ->
                job.load().seconds() * job.load().people()
                    + job.unload().seconds() * job.unload().people()
                    + (job.attendedCapture() ? job.captureSeconds() : 0))
        .sum();
  }

  /** Person-seconds of changeovers when every rig takes its jobs by due time. */
  int changeoverSecondsByDueTime() {
    return batch.floor().rigs().stream().mapToInt(this::changeoverSecondsByDueTime).sum();
  }

  private int changeoverSecondsByDueTime(Rig rig) {
    List<JobWork> order = new ArrayList<>(byRig.getOrDefault(rig.id(), List.of()));
    order.sort(Comparator.<JobWork, LocalDateTime>comparing(this::due).thenComparing(JobWork::job));
    Setup setup = rig.initialSetup();
    int sum = 0;
    for (JobWork job : order) {
      sum += seconds(rig, setup, job);
      setup = setup.after(job.request());
    }
    return sum;
  }

  private LocalDateTime due(JobWork job) {
    Promise promise = jobs.get(job.job()).promise();
    return promise == null ? LocalDateTime.MAX : promise.dueAt();
  }

  /** The same when each rig always goes to the job with the cheapest changeover. */
  int changeoverSecondsGrouped() {
    return batch.floor().rigs().stream().mapToInt(this::changeoverSecondsGrouped).sum();
  }

  /** The same for one rig. */
  int changeoverSecondsGrouped(Rig rig) {
    List<JobWork> left = new ArrayList<>(byRig.getOrDefault(rig.id(), List.of()));
    Setup setup = rig.initialSetup();
    int sum = 0;
    while (!left.isEmpty()) {
      Setup now = setup;
      JobWork next = Collections.min(left, Comparator.comparingInt(job -> seconds(rig, now, job)));
      left.remove(next);
      sum += seconds(rig, setup, next);
      setup = setup.after(next.request());
    }
    return sum;
  }

  private int seconds(Rig rig, Setup from, JobWork job) {
    Changeover changeover =
        Changeover.of(changeovers.steps(rig, from, job.request()), rig.twoStepsAtOnce());
    return changeover.attendedSeconds() * changeover.people();
  }

  int crewSeconds() {
    PlanClock clock = PlanClock.of(batch);
    int sum = 0;
    for (Operator operator : batch.floor().crew()) {
      sum += WorkingHours.of(operator, clock).stream().mapToInt(Span::seconds).sum();
    }
    return sum;
  }

  int rigOpenSeconds(Rig rig) {
    return WorkingHours.of(rig, PlanClock.of(batch)).stream().mapToInt(Span::seconds).sum();
  }
}
