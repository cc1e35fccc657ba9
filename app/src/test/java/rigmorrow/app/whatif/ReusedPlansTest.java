package rigmorrow.app.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.whatif.plans.ComparisonWatch;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.money.Investment;
import rigmorrow.model.money.MoneyTerms;
import rigmorrow.model.outcome.Cell;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.scenario.ScenarioChange;
import rigmorrow.model.scenario.Study;
import rigmorrow.solver.whatif.Past;
import rigmorrow.solver.whatif.WhatIfListener;

/** Which plans a comparison makes anew where others are kept already. */
class ReusedPlansTest {
  private static final int STEPS = 40;
  private static final Investment PRICE = new Investment(1000, 5, 5, 0);
  private static final Scenario TABLE =
      new Scenario("table", "A table", changes(new FloorChange.RigLike("R2", "R7", "R7")), PRICE);
  private static final Scenario LESS =
      new Scenario("less", "Without R1", changes(new FloorChange.RigGone("R1")), null);
  private static final List<Past> DAYS = SmallStudy.days(3, 6);

  @TempDir Path folder;
  private Path file;

  /** What a comparison told while it ran. */
  private static final class Told implements ComparisonWatch {
    final List<Cell> known = new ArrayList<>();
    final List<String> progress = new ArrayList<>();

    @Override
    public void begun(List<Cell> cells) {
      known.addAll(cells);
    }

    @Override
    public void warmingUp() {
      throw new IllegalStateException("no time stops these plans");
    }

    @Override
    public void finished(Cell cell, WhatIfListener.Progress now) {
      progress.add(cell.key().scenario() + " " + now.done() + "/" + now.all());
    }

    @Override
    public boolean stopRequested() {
      return false;
    }
  }

  private static List<ScenarioChange> changes(ScenarioChange... changes) {
    return List.of(changes);
  }

  private static Study study(Scenario... scenarios) {
    return new Study("x", MoneyTerms.USUAL, List.of(scenarios), Study.Prices.NONE);
  }

  @BeforeEach
  void compareOnce() throws Exception {
    file = folder.resolve("cells.csv");
    assertThat(told(study(TABLE, LESS)).progress).hasSize(9).endsWith("table 9/9");
  }

  private static Comparison comparison(Study study, List<Past> days, int steps) {
    RunSettings settings = new RunSettings(null, steps, 1, 1, List.of(), false, false);
    return new Comparison(study, days, settings, "rigmorrow test");
  }

  private Told told(Study study) throws Exception {
    return told(comparison(study, DAYS, STEPS));
  }

  private Told told(Comparison comparison) throws Exception {
    Told told = new Told();
    List<Cell> before = comparison.known(file).cells();
    assertThat(comparison.run(file, told).orElseThrow().whole()).isTrue();
    assertThat(told.known).isEqualTo(before);
    return told;
  }

  private int rows() throws Exception {
    return Files.readAllLines(file).size() - 2;
  }

  @Test
  void aScenarioThatComesBackIsNotPlannedAgain() throws Exception {
    assertThat(told(study(LESS)).progress).isEmpty();
    assertThat(told(study(TABLE)).progress).isEmpty();
    String before = Files.readString(file);
    Told told = told(study(LESS, TABLE));
    assertThat(told.progress).isEmpty();
    assertThat(told.known).hasSize(9);
    assertThat(file).hasContent(before);
  }

  @Test
  void oneMoreScenarioHasItsOwnCellsPlannedOnly() throws Exception {
    Scenario longer =
        new Scenario(
            "longer",
            "An hour more",
            changes(new FloorChange.LongerHours(List.of("R1"), List.of("O1"), 0, 60, false)),
            null);
    Told told = told(study(TABLE, longer, LESS));
    assertThat(told.progress).containsExactly("longer 10/12", "longer 11/12", "longer 12/12");
    assertThat(rows()).isEqualTo(12);
  }

  @Test
  void anotherNameTitleOrPricePlansNothing() throws Exception {
    Investment dearer = new Investment(90_000, 3, 9, 500);
    Scenario other = new Scenario("other", "Another title", TABLE.changes(), dearer);
    Comparison comparison = comparison(study(other, LESS), DAYS, STEPS);
    Told told = told(comparison);
    assertThat(told.progress).isEmpty();
    assertThat(comparison.compared(told.known, 9).results())
        .extracting(result -> result.scenario().name())
        .containsExactly("other", "less");
  }

  @Test
  void anotherChangeOfTheFloorPlansItsCellsOnly() throws Exception {
    Scenario other =
        new Scenario("table", "A table", changes(new FloorChange.RigLike("R3", "R7", "R7")), PRICE);
    assertThat(told(study(other, LESS)).progress)
        .containsExactly("table 7/9", "table 8/9", "table 9/9");
    // And the first is still there.
    assertThat(told(study(TABLE, LESS)).progress).isEmpty();
  }

  @Test
  void anotherPastDayIsPlannedAloneWithAllItsScenarios() throws Exception {
    List<Past> days = new ArrayList<>(DAYS);
    Past second = DAYS.get(1);
    days.set(1, new Past(second.name(), Demo.batch(7, 99, second.batch().shotList().date())));
    Told told = told(comparison(study(TABLE, LESS), days, STEPS));
    assertThat(told.known).hasSize(6).noneMatch(cell -> cell.key().batch().equals(second.name()));
    assertThat(told.progress).hasSize(3);
  }

  @Test
  void whatOperatorsArePaidForChangesEveryCell() throws Exception {
    Study paid =
        new Study(
            "x", new MoneyTerms(250, CrewPay.HANDS_ON), List.of(TABLE, LESS), Study.Prices.NONE);
    assertThat(told(paid).progress).hasSize(9);
    Study otherYear =
        new Study("x", new MoneyTerms(200, CrewPay.SHIFT), List.of(LESS), Study.Prices.NONE);
    assertThat(told(otherYear).progress).isEmpty();
  }

  /** Two scenarios that differ in their price only must differ in nothing that was planned. */
  @Test
  void twinsArePlannedOnce() throws Exception {
    Scenario one = new Scenario("one", "R3 gone", changes(new FloorChange.RigGone("R3")), null);
    Scenario twin = new Scenario("twin", "R3 gone, sold", one.changes(), PRICE);
    Told told = told(study(one, twin));
    assertThat(told.progress)
        .containsExactly("one 4/9", "twin 5/9", "one 6/9", "twin 7/9", "twin 8/9", "one 9/9");
    assertThat(rows()).isEqualTo(12);
    Comparison again = comparison(study(one, twin), DAYS, STEPS);
    Compared compared = again.compared(again.known(file).cells(), 9);
    for (Past day : DAYS) {
      assertThat(
              compared.cells().all().stream()
                  .filter(cell -> cell.key().batch().equals(day.name()))
                  .filter(cell -> !cell.key().scenario().equals(Scenario.BASE))
                  .map(Cell::outcome)
                  .distinct())
          .hasSize(1);
    }
  }
}
