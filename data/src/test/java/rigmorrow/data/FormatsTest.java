package rigmorrow.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.samples.SamplePlans;
import rigmorrow.data.samples.Samples;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.ShotList;

class FormatsTest {
  @TempDir private Path folder;
  private final Floor floor = Samples.tinyFloor();

  @ParameterizedTest
  @ValueSource(strings = {"floor.json", "floor.yaml", "floor.yml", "FLOOR.JSON"})
  void readsTheFloorItWrote(String name) throws Exception {
    Path file = folder.resolve(name);
    Formats.writeFloor(floor, file, SafeFile.Existing.KEEP);
    assertThat(Formats.readFloor(file)).isEqualTo(floor);
  }

  @ParameterizedTest
  @ValueSource(strings = {"shots.json", "shots.yaml"})
  void readsTheShotListItWrote(String name) throws Exception {
    ShotList list = Samples.tinyShots();
    Path file = folder.resolve(name);
    Formats.writeShotList(list, file, SafeFile.Existing.KEEP);
    assertThat(Formats.readShotList(file, floor)).isEqualTo(list);
  }

  @Test
  void readsThePlanItWrote() throws Exception {
    Plan plan = SamplePlans.tiny(LocalDate.of(2026, 11, 26));
    Path file = folder.resolve("plan.json");
    Formats.writePlan(plan, file, SafeFile.Existing.KEEP);
    assertThat(Formats.readPlan(file)).isEqualTo(plan);
  }

  @Test
  void writesThePlanAsATable() throws Exception {
    Plan plan = SamplePlans.tiny(LocalDate.of(2026, 11, 26));
    Path file = folder.resolve("plan.csv");
    Formats.writePlanTable(plan, Samples.tinyShots(), file, SafeFile.Existing.KEEP);
    assertThat(Files.readString(file)).startsWith("rig,place,job,").contains("bag-spin");
  }

  @Test
  void readsPastAByteOrderMark() throws Exception {
    Path file = folder.resolve("floor.yaml");
    Files.writeString(file, "\uFEFF" + Samples.text("tiny-floor.yaml"));
    assertThat(Formats.readFloor(file)).isEqualTo(floor);
  }

  @Test
  void namesAFileThatIsMissing() {
    refuses(folder.resolve("none.json"), "a file that is there");
  }

  @Test
  void namesAFolderInPlaceOfAFile() throws Exception {
    refuses(Files.createDirectory(folder.resolve("folder.json")), "a folder");
  }

  @Test
  void namesAnEndingThatNobodyReads() throws Exception {
    refuses(Files.writeString(folder.resolve("floor.txt"), "x"), ".json, .yaml or .yml");
  }

  @Test
  void namesEveryEndingThatAShotListMayHave() {
    assertThatThrownBy(() -> Formats.readShotList(folder.resolve("list.xls"), floor))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("a name that ends in .xlsx, .csv, .json, .yaml or .yml");
  }

  @Test
  void namesBytesThatAreNoText() throws Exception {
    byte[] latin1 = "name: Grün".getBytes(StandardCharsets.ISO_8859_1);
    refuses(Files.write(folder.resolve("floor.yaml"), latin1), "UTF-8");
  }

  @Test
  void namesAnEmptyFile() throws Exception {
    refuses(Files.writeString(folder.resolve("floor.yaml"), ""), "not an empty file");
    refuses(Files.writeString(folder.resolve("floor.json"), ""), "not an empty file");
  }

  private static void refuses(Path file, String words) {
    assertThatThrownBy(() -> Formats.readFloor(file))
        .isInstanceOf(InputException.class)
        .hasMessageContaining(file.toString())
        .hasMessageContaining(words);
  }
}
