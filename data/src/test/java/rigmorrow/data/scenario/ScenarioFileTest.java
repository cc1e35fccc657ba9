package rigmorrow.data.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigmorrow.data.json.Reading;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.samples.FormatPage;
import rigmorrow.data.samples.Samples;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.money.Investment;
import rigmorrow.model.money.MoneyTerms;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.scenario.Study;
import rigmorrow.model.shot.Batch;

class ScenarioFileTest {
  private static final List<Batch> DAYS = List.of(Samples.tinyBatch());

  private static Study read(String text) throws InputException {
    return ScenarioReader.read("test", text, Trees.Notation.YAML, DAYS);
  }

  private static List<InputProblem> told(String text, List<Batch> days) {
    return catchThrowableOfType(
            InputException.class,
            () -> ScenarioReader.read("test", text, Trees.Notation.YAML, days))
        .problems();
  }

  @ParameterizedTest
  @EnumSource(Trees.Notation.class)
  void readsWhatItWrote(Trees.Notation notation) throws Exception {
    Study study = Samples.tinyScenarios();
    String text = ScenarioWriter.write(study, 5, notation);
    ScenarioFile again = ScenarioReader.readFile("again", text, notation, DAYS);
    assertThat(again).isEqualTo(new ScenarioFile(study, 5));
    assertThat(ScenarioWriter.write(again.study(), 5, notation)).isEqualTo(text);
  }

  @Test
  void knowsTheFieldsOfThePage() throws Exception {
    Reading reading = new Reading(new Problems("tiny"));
    ScenarioReader.read(Samples.text("tiny-scenarios.yaml"), Trees.Notation.YAML, DAYS, reading);
    var known = new TreeMap<>(reading.known());
    known.keySet().removeAll(FormatPage.section("Floor file").keySet());
    assertThat(known).isEqualTo(FormatPage.section("Scenarios"));
  }

  @Test
  void fillsInWhatIsMissing() throws Exception {
    Study study =
        read(
            """
            version: 1
            name: x
            money: {interestPercent: 4}
            scenarios:
              - name: same
              - name: more
                purchase: {price: 10, lifeYears: 2}
                changes:
                  - addRigLike: {like: t1, id: t9}
            """);
    assertThat(study.terms()).isEqualTo(new MoneyTerms(250, CrewPay.SHIFT));
    assertThat(study.prices()).isEqualTo(Study.Prices.NONE);
    assertThat(study.scenarios().get(0)).isEqualTo(new Scenario("same", "same", List.of(), null));
    assertThat(study.scenarios().get(1).purchase()).isEqualTo(new Investment(10, 2, 4, 0));
  }

  @Test
  void laterChangesSeeEarlierOnes() throws Exception {
    String text =
        """
        version: 1
        name: x
        money: {interestPercent: 4}
        scenarios:
          - name: more
            changes:
              - addRigLike: {like: t1, id: t9}
              - longerHours: {rigs: [t9], laterMinutes: 30}
              - removeRig: {rig: t9}
        """;
    assertThat(read(text).scenarios().get(0).changes()).hasSize(3);
  }

  @Test
  void tellsOnWhichDaysAChangeCannotBeMade() {
    Floor floor = DAYS.get(0).floor();
    Floor without = floor.withRigs(floor.rigs().subList(0, 1));
    assertThat(without.rigs()).extracting(Rig::id).containsExactly("t1");
    List<Batch> days = new ArrayList<>(DAYS);
    days.add(new Batch(without, DAYS.get(0).shotList()));
    days.add(new Batch(without, DAYS.get(0).shotList()));
    String text =
        """
        version: 1
        name: x
        money: {interestPercent: 4}
        scenarios:
          - {name: a, changes: [{addRigLike: {like: t2, id: t9}}]}
          - {name: b, changes: [{addRigLike: {like: t0, id: t9}}]}
        """;
    assertThat(told(text, days))
        .extracting(InputProblem::line)
        .containsExactly(
            "scenarios[0].changes[0].addRigLike.like: 't2'; accepted: rigs: t1 (did you mean t1?)"
                + " (on 2026-11-26 and 1 other day)",
            "scenarios[1].changes[0].addRigLike.like: 't0'; accepted: rigs: t1, t2 (did you mean"
                + " t1?) (on 2026-11-26)",
            "scenarios[1].changes[0].addRigLike.like: 't0'; accepted: rigs: t1 (did you mean t1?)"
                + " (on 2026-11-26 and 1 other day)");
  }

  @Test
  void tellsProblemsOfEveryKindAtOnce() {
    String text =
        """
        version: 1
        name: x
        money: {interestPercent: 4, workingDaysPerYear: 400}
        scenarios:
          - name: a
            purchase: {price: -1, lifeYears: 2}
            changes:
              - removeRig: {rig: t0}
              - addKitUnits: {kit: head, units: 0}
              - removeRig: {rig: t7}
          - {name: a, changes: [{addRigLike: {like: t8, id: t9}}]}
          - {name: as-it-is, changes: [{addOperatorLike: {like: nobody, id: o9}}]}
        prices: {rigs: [{id: t6, price: 1, lifeYears: 0}]}
        """;
    assertThat(told(text, DAYS))
        .extracting(problem -> problem.where() + " " + problem.value())
        .containsExactly(
            "money.workingDaysPerYear 400",
            "scenarios[0].purchase.price -1",
            "scenarios[0].changes[0].removeRig.rig t0",
            "scenarios[0].changes[1].addKitUnits.units 0",
            "scenarios[0].changes[2].removeRig.rig t7",
            "scenarios[1].name a",
            "scenarios[1].changes[0].addRigLike.like t8",
            "scenarios[2].name as-it-is",
            "scenarios[2].changes[0].addOperatorLike.like nobody",
            "prices.rigs[0].id t6",
            "prices.rigs[0].lifeYears 0");
  }

  /** Who mends the first would find the second right. */
  @Test
  void blamesNoChangeForANameThatARefusedOneBrings() {
    String text =
        """
        version: 1
        name: x
        money: {interestPercent: 4}
        scenarios:
          - name: a
            changes:
              - addRigLike: {like: t1, id: 9}
              - removeRig: {rig: "9"}
        """;
    assertThat(told(text, DAYS))
        .extracting(InputProblem::where)
        .containsExactly("scenarios[0].changes[0].addRigLike.id");
  }
}
