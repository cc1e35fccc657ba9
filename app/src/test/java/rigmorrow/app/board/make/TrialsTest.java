package rigmorrow.app.board.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.board.desk.BoardState;
import rigmorrow.app.board.desk.Desk;
import rigmorrow.app.board.desk.Tried;
import rigmorrow.app.board.touch.Touch;
import rigmorrow.app.board.view.JobView.PlacingView;
import rigmorrow.app.board.view.TriedView;
import rigmorrow.app.board.view.VersionView.DifferenceView;
import rigmorrow.app.board.view.VersionView.MoveView;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotList;

/** A touch's cost and consequences, as the page shows them before it is kept. */
class TrialsTest {
  @TempDir Path folder;

  private Desk desk;

  @BeforeEach
  void open() {
    desk = Desk.open(folder, Demo.batch(60, 2, LocalDate.of(2026, 3, 4)), null, Clock.systemUTC());
  }

  @AfterEach
  void close() {
    desk.close();
  }

  @Test
  void showsWhatAMoveCostsAndWhatItMoves() {
    BoardState before = desk.now();
    RigPlan rig = longest(before);
    String job = rig.jobs().get(rig.jobs().size() - 1).job();
    Touch touch = new Touch.Move(job, rig.rig(), 0);
    TriedView view = Trials.of(desk.attempt(before.revision(), touch));
    assertThat(view.allowed()).isTrue();
    assertThat(view.refusals()).isEmpty();
    assertThat(view.sentence()).contains(job);
    BoardState after = desk.keep(before.revision(), touch);
    assertThat(view.after()).isEqualTo(Figures.of(after.batch(), after.plan()));
    Set<String> changed =
        view.placings().stream().map(PlacingView::job).collect(Collectors.toSet());
    assertThat(changed).contains(job).isEqualTo(otherwise(before, after));
    assertThat(view.costs()).isNotEmpty();
    assertThat(view.costs()).allMatch(sentence -> sentence.matches("[A-Z0-9].*\\."));
    assertThat(view.costs().get(0))
        .startsWith(view.standing().equals("WORSE") ? "Worse" : "Better");
    long points = Math.abs(view.after().softPoints() - view.before().softPoints());
    assertThat(view.costs().get(0))
        .as("the difference of the figures beside it")
        .contains(String.format(java.util.Locale.ROOT, " %,d point", points));
  }

  @Test
  void tellsTheFiguresThatMove() {
    BoardState before = desk.now();
    String job = longest(before).jobs().get(0).job();
    TriedView view = Trials.of(desk.attempt(before.revision(), new Touch.LeaveOut(job)));
    assertThat(view.standing()).isEqualTo("WORSE");
    assertThat(view.leftOut()).contains(job);
    int was = before.plan().figures().leftOut();
    assertThat(view.costs())
        .anyMatch(
            one ->
                one.startsWith((was + 1) + " job")
                    && one.endsWith("left out instead of " + was + "."));
  }

  @Test
  void namesTheJobsThatWouldBeNewlyLate() {
    BoardState day = desk.replace(1, Demo.batch(150, 1, LocalDate.of(2026, 3, 4)), "a longer day");
    int most = 0;
    for (RigPlan rig : day.plan().rigs()) {
      String last = rig.jobs().get(rig.jobs().size() - 1).job();
      Tried tried = desk.attempt(day.revision(), new Touch.Move(last, rig.rig(), 0));
      List<String> newly =
          tried.after().rigs().stream()
              .flatMap(one -> one.jobs().stream())
              .filter(one -> one.lateSeconds() > 0)
              .map(PlannedJob::job)
              .filter(id -> day.plan().job(id).orElseThrow().lateSeconds() == 0)
              .toList();
      most = Math.max(most, newly.size());
      List<String> said =
          Trials.of(tried).costs().stream().filter(one -> one.startsWith("Newly late: ")).toList();
      assertThat(said).hasSize(newly.isEmpty() ? 0 : 1);
      if (!newly.isEmpty()) {
        long named = newly.stream().filter(id -> said.get(0).contains(id + " ")).count();
        assertThat(named).isEqualTo(Math.min(5, newly.size()));
        assertThat(said.get(0).endsWith(" and " + (newly.size() - 5) + " more."))
            .isEqualTo(newly.size() > 5);
      }
    }
    assertThat(most).as("more than are named").isGreaterThan(5);
  }

  @Test
  void saysWhyATouchIsRefused() {
    BoardState before = desk.now();
    var fits = new FitBook().of(before.batch());
    var misfit =
        fits.stream()
            .filter(fit -> fit.fitsSomewhere() && fit.rigs().stream().anyMatch(rig -> !rig.fits()))
            .findFirst()
            .orElseThrow();
    String rig = misfit.rigs().stream().filter(one -> !one.fits()).findFirst().orElseThrow().rig();
    Tried tried = desk.attempt(before.revision(), new Touch.Move(misfit.job(), rig, 0));
    TriedView view = Trials.of(tried);
    assertThat(view.allowed()).isFalse();
    assertThat(view.refusals()).isNotEmpty().allMatch(one -> one.contains("needed"));
    assertThat(view.after()).isNull();
    assertThat(view.placings()).isEmpty();
    assertThat(view.standing()).isEqualTo("EQUAL");
  }

  @Test
  void comparesTwoPlansJobByJob() {
    BoardState before = desk.now();
    desk.putBy(before.revision(), "before");
    RigPlan rig = longest(before);
    String job = rig.jobs().get(rig.jobs().size() - 1).job();
    BoardState after = desk.keep(before.revision(), new Touch.Move(job, rig.rig(), 0));
    DifferenceView view = Differences.of(desk.kept(1), desk.kept(0));
    assertThat(view.moves().stream().map(MoveView::job).collect(Collectors.toSet())).contains(job);
    MoveView move =
        view.moves().stream().filter(one -> one.job().equals(job)).findFirst().orElseThrow();
    assertThat(move.sentence())
        .startsWith("From " + rig.rig() + ", place " + rig.jobs().size() + ", ")
        .contains(" to " + rig.rig() + ", place 1, ");
    assertThat(view.moves())
        .extracting(MoveView::group)
        .contains("On " + rig.rig() + ", at another place")
        .allMatch(group -> group.startsWith("On "));
    assertThat(view.after()).isEqualTo(Figures.of(after.batch(), after.plan()));
    DifferenceView same = Differences.of(desk.kept(1), desk.kept(1));
    assertThat(same.moves()).isEmpty();
    assertThat(same.costs()).containsExactly("Costs the same.");
  }

  @Test
  void comparesWhatIsAskedOfAJob() {
    BoardState before = desk.now();
    desk.putBy(1, "before");
    RigPlan rig = longest(before);
    String job = rig.jobs().get(0).job();
    int weight = before.batch().shotList().job(job).orElseThrow().weight();
    LocalDateTime due = before.batch().shotList().date().plusDays(2).atTime(15, 30);
    desk.keep(1, new Touch.Hold(job, true, null));
    desk.keep(2, new Touch.SetWeight(job, weight + 1));
    desk.keep(3, new Touch.SetPromise(job, due, false));
    String sentence = moved(Differences.of(desk.kept(1), desk.kept(0)), job);
    assertThat(sentence)
        .contains(
            "Counts " + (weight + 1) + " instead of " + weight + ".",
            "Pin: " + rig.rig() + ", place 1 instead of none.")
        .contains("Promise: Fri 2026-03-06 15:30 instead of ");
    assertThat(moved(Differences.of(desk.kept(0), desk.kept(1)), job))
        .contains("Pin: none instead of " + rig.rig() + ", place 1.");
  }

  /** The same hours of another day are not the same time; nor is one more day another time. */
  @Test
  void comparesPlansOfDifferentDaysByTheirDates() {
    BoardState before = desk.now();
    desk.putBy(1, "before");
    Batch batch = before.batch();
    ShotList list = batch.shotList();
    String job = longest(before).jobs().get(0).job();
    ShotList longer = list.withDates(list.date(), 2);
    desk.replace(1, new Batch(batch.floor(), longer), "two days");
    DifferenceView same = Differences.of(desk.kept(1), desk.kept(0));
    assertThat(same.moves()).extracting(MoveView::job).doesNotContain(job);
    desk.replace(2, new Batch(batch.floor(), list.withDates(list.date().plusDays(1), 1)), "later");
    String sentence = moved(Differences.of(desk.kept(1), desk.kept(0)), job);
    assertThat(sentence).contains(list.date().toString(), list.date().plusDays(1).toString());
  }

  @Test
  void tellsMovedJobsByWhatHappensToThem() {
    BoardState before = desk.now();
    desk.putBy(1, "before");
    RigPlan rig = longest(before);
    String out = rig.jobs().get(rig.jobs().size() - 1).job();
    String heavier = rig.jobs().get(0).job();
    int weight = before.batch().shotList().job(heavier).orElseThrow().weight();
    desk.keep(1, new Touch.LeaveOut(out));
    desk.keep(2, new Touch.SetWeight(heavier, weight + 1));
    DifferenceView view = Differences.of(desk.kept(1), desk.kept(0));
    assertThat(group(view, out)).isEqualTo("Left out now, from " + rig.rig());
    assertThat(group(view, heavier))
        .isEqualTo("Where they were, with another promise, weight or pin");
    assertThat(group(Differences.of(desk.kept(0), desk.kept(1)), out))
        .isEqualTo("Taken in, to " + rig.rig());
  }

  private static String group(DifferenceView view, String job) {
    return view.moves().stream()
        .filter(one -> one.job().equals(job))
        .findFirst()
        .orElseThrow()
        .group();
  }

  private static String moved(DifferenceView view, String job) {
    return view.moves().stream()
        .filter(one -> one.job().equals(job))
        .findFirst()
        .orElseThrow()
        .sentence();
  }

  private static RigPlan longest(BoardState state) {
    return state.plan().rigs().stream()
        .max((a, b) -> a.jobs().size() - b.jobs().size())
        .orElseThrow();
  }

  private static Set<String> otherwise(BoardState before, BoardState after) {
    List<String> old = placed(before);
    return placed(after).stream()
        .filter(one -> !old.contains(one))
        .map(one -> one.substring(0, one.indexOf('|')))
        .collect(Collectors.toSet());
  }

  private static List<String> placed(BoardState state) {
    List<String> placed = new java.util.ArrayList<>();
    for (RigPlan rig : state.plan().rigs()) {
      for (PlannedJob job : rig.jobs()) {
        placed.add(job.job() + "|" + rig.rig() + rig.jobs().indexOf(job) + job);
      }
    }
    return placed;
  }
}
