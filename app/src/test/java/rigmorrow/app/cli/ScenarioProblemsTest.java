package rigmorrow.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.app.cli.Runner.Ran;
import rigmorrow.app.whatif.SmallStudy;

/** What the command says of scenario files that cannot be used. */
class ScenarioProblemsTest {
  @TempDir static Path folder;

  @BeforeAll
  static void writeDays() {
    SmallStudy.write(folder, SmallStudy.days(2, 6), SmallStudy.study());
  }

  @Test
  void tellsEverythingThatIsWrongWithItsFiles() throws Exception {
    Files.writeString(
        folder.resolve("bad.yaml"),
        "version: 1\nname: x\nmoney: {interestPercent: 5}\nscenarios:\n"
            + "  - {name: a, changes: [{removeRig: {rig: R9}}]}\n"
            + "  - {name: b, changes: [{addRigLike: {like: R1, id: R2}}]}\n");
    Ran ran = Runner.run(folder, "whatif", "bad.yaml", "days", "--out", "bad");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err())
        .contains("bad.yaml: 2 problems")
        .contains("scenarios[0].changes[0].removeRig.rig: 'R9'; accepted: rigs: R1, R2")
        .contains("scenarios[1].changes[0].addRigLike.id: 'R2'");
    assertThat(folder.resolve("bad")).doesNotExist();
    assertThat(Runner.run(folder, "whatif", "scenarios.yaml", "no-days").exitCode()).isEqualTo(2);
    assertThat(Runner.run(folder, "whatif", "no.yaml", "days").exitCode()).isEqualTo(2);
  }

  @Test
  void tellsProblemsOfEveryKindInOneList() throws Exception {
    Files.writeString(
        folder.resolve("kinds.yaml"),
        "version: 1\nname: x\nmoney: {interestPercent: 5}\nscenarios:\n"
            + "  - {name: a, purchase: {price: -5, lifeYears: 3}, changes: [{removeRig: {rig: R9}}]}\n"
            + "  - {name: a, changes: [{removeRig: {rig: R8}}]}\n");
    Ran ran = Runner.run(folder, "whatif", "kinds.yaml", "days", "--out", "kinds");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err())
        .contains("kinds.yaml: 4 problems")
        .containsSubsequence(
            "scenarios[0].purchase.price: '-5'; accepted: a number from 0 to 1000000000",
            "scenarios[0].changes[0].removeRig.rig: 'R9'; accepted: rigs: R1, R2",
            "scenarios[1].name: 'a'; accepted: a text that no other has; a was there before",
            "scenarios[1].changes[0].removeRig.rig: 'R8'; accepted: rigs: R1, R2");
    assertThat(folder.resolve("kinds")).doesNotExist();
  }

  /** Names of what is compared besides are as much a problem of the file, asked for or not. */
  @ParameterizedTest
  @ValueSource(strings = {"", "--again", "--one-more"})
  void refusesNamesThatAreTaken(String option) throws Exception {
    Files.writeString(
        folder.resolve("taken.yaml"),
        "version: 1\nname: x\nmoney: {interestPercent: 5}\nscenarios:\n"
            + "  - {name: as-it-is-again}\n  - {name: 'one-more:R1'}\n");
    List<String> command =
        new ArrayList<>(List.of("whatif", "taken.yaml", "days", "--out", "taken"));
    if (!option.isEmpty()) {
      command.add(option);
    }
    Ran ran = Runner.run(folder, command.toArray(String[]::new));
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err())
        .contains("taken.yaml: 2 problems")
        .contains("scenarios[0].name: 'as-it-is-again'", "scenarios[1].name: 'one-more:R1'");
  }
}
