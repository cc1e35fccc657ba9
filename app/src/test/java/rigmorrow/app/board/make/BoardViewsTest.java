package rigmorrow.app.board.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.app.board.desk.BoardState;
import rigmorrow.app.board.desk.Glance;
import rigmorrow.app.board.view.BoardView;
import rigmorrow.app.board.view.BoardView.LoadView;
import rigmorrow.app.board.view.BoardView.OperatorView;
import rigmorrow.app.board.view.BoardView.RigView;
import rigmorrow.app.board.view.BoardView.SpanView;
import rigmorrow.app.board.view.BoardView.UseView;
import rigmorrow.app.board.view.FitView;
import rigmorrow.app.board.view.JobView;
import rigmorrow.app.board.view.JobView.PlacingView;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.solver.FloorSolver;

/** What the page is given is the plan, part by part. */
class BoardViewsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 4);

  private final FitBook fits = new FitBook();

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void showsEveryPartOfThePlan(long seed) {
    Batch batch = Demo.batch(60, seed, DAY);
    Plan plan = FloorSolver.dispatch(batch);
    BoardView view = view(batch, plan);
    Map<String, JobView> jobs =
        view.jobs().stream().collect(Collectors.toMap(JobView::id, Function.identity()));
    assertThat(jobs).hasSize(60);
    for (RigPlan rig : plan.rigs()) {
      RigView shown =
          view.rigs().stream().filter(one -> one.id().equals(rig.rig())).findFirst().orElseThrow();
      assertThat(shown.jobs())
          .containsExactlyElementsOf(rig.jobs().stream().map(PlannedJob::job).toList());
      for (int place = 0; place < rig.jobs().size(); place++) {
        PlannedJob job = rig.jobs().get(place);
        PlacingView placing = jobs.get(job.job()).placing();
        assertThat(placing.rig()).isEqualTo(rig.rig());
        assertThat(placing.place()).isEqualTo(place);
        assertThat(placing.start()).isEqualTo(job.whole().start());
        assertThat(placing.end()).isEqualTo(job.whole().end());
        assertThat(placing.capture())
            .isEqualTo(new SpanView(job.capture().start(), job.capture().end()));
        assertThat(placing.changeover() == null).isEqualTo(job.changeover() == null);
        assertThat(placing.steps()).hasSameSizeAs(job.steps());
        assertThat(placing.kit()).hasSameSizeAs(job.kit());
        assertThat(placing.lateSeconds()).isEqualTo(job.lateSeconds());
        assertThat(jobs.get(job.job()).leftOut()).isNull();
        assertThat(jobs.get(job.job()).fits()).contains(rig.rig());
      }
    }
    plan.leftOut()
        .forEach(
            left -> {
              assertThat(jobs.get(left.job()).placing()).isNull();
              assertThat(jobs.get(left.job()).leftOut().cause()).isEqualTo(left.cause().name());
              assertThat(jobs.get(left.job()).leftOut().sentences()).isEqualTo(left.sentences());
            });
    assertThat(view.figures().planned() + view.figures().leftOut()).isEqualTo(60);
    assertThat(view.figures().softPoints()).isEqualTo(plan.figures().softPoints());
    long promises = batch.shotList().jobs().stream().filter(job -> job.promise() != null).count();
    assertThat(view.figures().promises()).isEqualTo((int) promises);
    long leftOut =
        plan.leftOut().stream().filter(left -> jobs.get(left.job()).promise() != null).count();
    assertThat(view.figures().promisesKept())
        .isEqualTo((int) (promises - leftOut - plan.figures().lateJobs()));
  }

  @Test
  void countsSecondsFromMidnightOfTheFloor() {
    Batch batch = Demo.batch(12, 1, LocalDate.of(2026, 3, 29)); // the clock goes forward
    BoardView view = view(batch, FloorSolver.dispatch(batch));
    ZonedDateTime midnight = LocalDate.of(2026, 3, 29).atStartOfDay(batch.floor().zone());
    assertThat(view.originMillis()).isEqualTo(midnight.toInstant().toEpochMilli());
    assertThat(view.horizonSeconds()).isEqualTo(23 * 3600);
    assertThat(view.zone()).isEqualTo(batch.floor().zone().getId());
  }

  @Test
  void addsUpWhatTheCrewDoes() {
    Batch batch = Demo.batch(60, 2, DAY);
    BoardView view = view(batch, FloorSolver.dispatch(batch));
    for (OperatorView operator : view.operators()) {
      assertThat(operator.tasks().stream().mapToLong(task -> task.end() - task.start()).sum())
          .isEqualTo(operator.handsOnSeconds());
      assertThat(seconds(operator.shifts())).isEqualTo(operator.shiftSeconds());
      assertThat(operator.breaks()).isNotEmpty();
      for (SpanView rest : operator.breaks()) {
        assertThat(operator.tasks())
            .noneMatch(task -> task.start() < rest.end() && rest.start() < task.end());
      }
    }
    double busy = 0;
    double there = 0;
    int end = 0;
    for (LoadView load : view.crewLoad()) {
      assertThat(load.start()).isGreaterThanOrEqualTo(end);
      assertThat(load.busy()).isLessThanOrEqualTo(load.there() + 0.11);
      end = load.end();
      busy += load.busy() * (load.end() - load.start());
      there += load.there() * (load.end() - load.start());
    }
    double rounding = 0.05 * 900 * view.crewLoad().size();
    assertThat(busy)
        .isCloseTo(
            (double) view.operators().stream().mapToLong(OperatorView::handsOnSeconds).sum(),
            within(rounding));
    assertThat(there)
        .isCloseTo(
            (double) view.operators().stream().mapToLong(OperatorView::shiftSeconds).sum(),
            within(rounding));
  }

  @Test
  void showsKitAndSamplesInOnePlaceAtATime() {
    Batch batch = Demo.batch(150, 1, DAY);
    Plan plan = FloorSolver.dispatch(batch);
    BoardView view = view(batch, plan);
    List<List<UseView>> all =
        Stream.concat(
                view.kits().stream().flatMap(kit -> kit.units().stream()).map(unit -> unit.uses()),
                view.samples().stream().map(sample -> sample.uses()))
            .toList();
    for (List<UseView> uses : all) {
      for (int i = 1; i < uses.size(); i++) {
        assertThat(uses.get(i).start()).isGreaterThanOrEqualTo(uses.get(i - 1).end());
      }
    }
    long used =
        plan.rigs().stream()
            .flatMap(rig -> rig.jobs().stream())
            .mapToLong(job -> job.kit().size())
            .sum();
    assertThat(used).isPositive();
    assertThat(
            view.kits().stream()
                .flatMap(kit -> kit.units().stream())
                .mapToLong(unit -> unit.uses().size())
                .sum())
        .isEqualTo(used);
    assertThat(view.samples()).isNotEmpty().allMatch(sample -> !sample.id().isEmpty());
  }

  @Test
  void showsPins() {
    Batch made = Demo.batch(12, 1, DAY);
    ShotJob job = made.shotList().jobs().get(0);
    String rig =
        new FitCheck(made.floor())
            .of(job).rigs().stream().filter(fit -> fit.fits()).findFirst().orElseThrow().rig();
    Pin pin = new Pin(job.id(), rig, 0, LocalDateTime.of(2026, 3, 4, 8, 30), PinState.PLANNED);
    ShotList list = made.shotList();
    Batch batch =
        new Batch(made.floor(), new ShotList(list.date(), list.days(), list.jobs(), List.of(pin)));
    JobView view = view(batch, FloorSolver.dispatch(batch)).jobs().get(0);
    assertThat(view.pin()).isEqualTo(new JobView.PinView(rig, 0, "2026-03-04T08:30", "PLANNED"));
  }

  @Test
  void remembersTheFitCheckOfJobsThatStay() {
    Batch batch = Demo.batch(40, 1, DAY);
    assertThat(fits.of(batch)).isEqualTo(fits.of(batch));
    FitView view = fits.view(batch);
    FitCheck check = new FitCheck(batch.floor());
    for (int i = 0; i < 40; i++) {
      var fit = check.of(batch.shotList().jobs().get(i));
      assertThat(view.jobs().get(i).fitsSomewhere()).isEqualTo(fit.fitsSomewhere());
      assertThat(view.jobs().get(i).unmeasured()).isEqualTo(fit.unmeasured());
      for (int rig = 0; rig < fit.rigs().size(); rig++) {
        assertThat(view.jobs().get(i).cells().get(rig).reasons())
            .hasSameSizeAs(fit.rigs().get(rig).reasons());
      }
    }
    Batch other = Demo.batch(10, 2, DAY);
    assertThat(fits.of(other)).hasSize(10);
  }

  private BoardView view(Batch batch, Plan plan) {
    BoardState state = new BoardState(1, batch, plan, List.of(), "begun", Instant.EPOCH);
    return new BoardViews(fits).of(new Glance(state, new PlanStamp("", ""), null, null, 1), false);
  }

  private static long seconds(List<SpanView> spans) {
    return spans.stream().mapToLong(span -> span.end() - span.start()).sum();
  }
}
