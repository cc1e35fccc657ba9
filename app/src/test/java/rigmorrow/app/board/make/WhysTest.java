package rigmorrow.app.board.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.app.board.desk.BoardState;
import rigmorrow.app.board.view.TroublesView.TroubleView;
import rigmorrow.app.board.view.WhyView;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.explain.Explanation;
import rigmorrow.model.explain.Standing;
import rigmorrow.model.explain.Trouble;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.explain.Explainer;

/** What the board says to "why" and to what is wrong. */
class WhysTest {
  private static final String NOT_FOUND = "The search has not found this place";
  private static final Batch BATCH = Demo.batch(150, 1, LocalDate.of(2026, 3, 18));
  private static final Plan PLAN = FloorSolver.dispatch(BATCH);

  private final Explainer explainer = new Explainer(BATCH, PLAN);

  @Test
  void speaksOfASearchOnlyWhereThereWasOne() {
    Explanation answer =
        PLAN.rigs().stream()
            .flatMap(rig -> rig.jobs().stream())
            .map(job -> explainer.explain(job.job()))
            .filter(
                one ->
                    one.rigs().stream()
                        .anyMatch(
                            rig -> rig.best() != null && rig.best().standing() == Standing.BETTER))
            .findFirst()
            .orElseThrow();
    assertThat(view(PLAN, answer).rigs()).noneMatch(rig -> rig.sentence().contains(NOT_FOUND));
    assertThat(view(searched(), answer).rigs()).anyMatch(rig -> rig.sentence().contains(NOT_FOUND));
  }

  @Test
  void tellsOfEachRigOnce() {
    Explanation answer = explainer.explain(PLAN.rigs().get(0).jobs().get(1).job());
    WhyView view = view(PLAN, answer);
    assertThat(view.rigs()).hasSameSizeAs(BATCH.floor().rigs());
    assertThat(view.sections())
        .flatExtracting(WhyView.SectionView::sentences)
        .noneMatch(
            sentence -> view.rigs().stream().anyMatch(rig -> sentence.contains(rig.sentence())));
  }

  @Test
  void leadsWithTheMoveThatHelpsALateJob() {
    List<Trouble> troubles = explainer.troubles();
    List<TroubleView> views = new Whys(state(PLAN)).of(troubles).troubles();
    int moves = 0;
    for (int i = 0; i < views.size(); i++) {
      Trouble trouble = troubles.get(i);
      String sentence = views.get(i).sentence();
      if (trouble.times() == null) {
        continue;
      }
      if (trouble.best() == null) {
        assertThat(sentence).contains("At the cheapest place on each rig it would be no less late");
        assertThat(views.get(i).rig()).isNull();
      } else {
        moves++;
        assertThat(views.get(i).rig()).isEqualTo(trouble.best().times().rig());
        assertThat(views.get(i).place()).isEqualTo(trouble.best().times().place());
        assertThat(sentence.indexOf("Move it to "))
            .isBetween(1, Math.max(1, sentence.indexOf(" If ")));
      }
    }
    assertThat(moves).as("some late job has a better place").isPositive();
  }

  private static WhyView view(Plan plan, Explanation answer) {
    return new Whys(state(plan)).of(answer);
  }

  private static Plan searched() {
    PlanOrigin origin = new PlanOrigin("search", 1, 1, 100, "steps");
    return new Plan(
        PLAN.floor(),
        PLAN.zone(),
        PLAN.date(),
        PLAN.days(),
        PLAN.rigs(),
        PLAN.leftOut(),
        PLAN.figures(),
        origin);
  }

  private static BoardState state(Plan plan) {
    return new BoardState(1, BATCH, plan, List.of(), "begun", Instant.EPOCH);
  }
}
