package rigmorrow.app.board.make;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.view.JobView;
import rigmorrow.app.board.view.JobView.LeftOutView;
import rigmorrow.app.board.view.JobView.PinView;
import rigmorrow.app.board.view.JobView.PlacingView;
import rigmorrow.app.board.view.JobView.PromiseView;
import rigmorrow.app.runsheet.text.ItemText;
import rigmorrow.app.runsheet.text.JobCautions;
import rigmorrow.app.runsheet.text.Names;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.fit.RigFit;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.work.SetupRequests;

/** The jobs of a plan, for the page. */
final class Jobs {
  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm", Locale.ROOT);

  private final Batch batch;
  private final Plan plan;
  private final PlanClock clock;
  private final Names names;
  private final Map<String, Setup> requests = new HashMap<>();
  private final Map<String, Pin> pins = new HashMap<>();
  private final Map<String, LeftOut> leftOut = new HashMap<>();
  private final Map<String, List<String>> cautions = new HashMap<>();

  Jobs(Batch batch, Plan plan) {
    this.batch = batch;
    this.plan = plan;
    this.clock = PlanClock.of(batch);
    this.names = new Names(batch);
    batch
        .shotList()
        .jobs()
        .forEach(job -> requests.put(job.id(), SetupRequests.of(batch.floor(), job)));
    batch.shotList().pins().forEach(pin -> pins.put(pin.job(), pin));
    plan.leftOut().forEach(left -> leftOut.put(left.job(), left));
    findCautions();
  }

  /**
   * Every job, in shot list order.
   *
   * @param fits the fit check's answers, in the same order
   */
  List<JobView> all(List<JobFit> fits) {
    Map<String, PlacingView> placings = new Placings(batch).of(plan);
    List<JobView> views = new ArrayList<>();
    List<ShotJob> jobs = batch.shotList().jobs();
    for (int i = 0; i < jobs.size(); i++) {
      views.add(view(jobs.get(i), fits.get(i), placings.get(jobs.get(i).id())));
    }
    return views;
  }

  private JobView view(ShotJob job, JobFit fit, @Nullable PlacingView placing) {
    return new JobView(
        job.id(),
        job.article(),
        job.name(),
        job.sample(),
        job.recipe(),
        batch.floor().recipe(job.recipe()).map(Recipe::label).orElse(job.recipe()),
        job.weight(),
        promise(job.promise()),
        seconds(job.arrivesAt()),
        seconds(job.leavesAt()),
        job.note(),
        ItemText.measures(job.item()),
        ItemText.loading(job.item()),
        fit.rigs().stream().filter(RigFit::fits).map(RigFit::rig).toList(),
        names.setup(requests.getOrDefault(job.id(), Setup.ANY)).stream()
            .map(fact -> fact.label() + ": " + fact.value())
            .toList(),
        cautions.getOrDefault(job.id(), List.of()),
        pin(pins.get(job.id())),
        placing,
        leftOut(leftOut.get(job.id())));
  }

  /** What is set up stays, and so does what to mind with it: so each rig is followed in order. */
  private void findCautions() {
    JobCautions source = new JobCautions(batch.floor());
    for (RigPlan rigPlan : plan.rigs()) {
      Rig rig = names.rig(rigPlan.rig());
      Setup setup = rig.initialSetup();
      for (PlannedJob planned : rigPlan.jobs()) {
        setup = setup.after(requests.getOrDefault(planned.job(), Setup.ANY));
        cautions.put(planned.job(), source.of(names.job(planned.job()), rig, setup));
      }
    }
  }

  private @Nullable PromiseView promise(@Nullable Promise promise) {
    return promise == null
        ? null
        : new PromiseView(
            clock.secondsAt(promise.dueAt()), MINUTE.format(promise.dueAt()), promise.must());
  }

  private @Nullable Integer seconds(@Nullable LocalDateTime time) {
    return time == null ? null : clock.secondsAt(time);
  }

  private static @Nullable PinView pin(@Nullable Pin pin) {
    if (pin == null) {
      return null;
    }
    LocalDateTime start = pin.startsAt();
    return new PinView(
        pin.rig(), pin.place(), start == null ? null : MINUTE.format(start), pin.state().name());
  }

  private static @Nullable LeftOutView leftOut(@Nullable LeftOut left) {
    return left == null ? null : new LeftOutView(left.cause().name(), left.sentences());
  }
}
