package rigmorrow.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static rigmorrow.app.cli.Runner.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigmorrow.app.cli.Runner.Ran;
import rigmorrow.app.terminal.Text;
import rigmorrow.data.demo.Demo;
import rigmorrow.data.json.Trees;
import rigmorrow.data.shotjson.ShotJsonWriter;

class CommandsTest {
  private static final String[] FILES = {"out/demo/floor.yaml", "out/demo/shot-list.csv"};

  @TempDir static Path folder;
  private static Ran demo;

  @BeforeAll
  static void planTheDemo() {
    demo = run(folder, "demo", "--jobs", "30", "--seed", "4", "--steps", "500");
    assertThat(demo.exitCode()).as(demo.err()).isZero();
  }

  @Test
  void plansADemoFromFilesAnyUserCouldWrite() {
    assertThat(demo.err()).contains("written to out/demo");
    assertThat(folder.resolve("out/demo"))
        .isDirectoryContaining("glob:**/floor.yaml")
        .isDirectoryContaining("glob:**/shot-list.csv")
        .isDirectoryContaining("glob:**/plan.json")
        .isDirectoryContaining("glob:**/plan.csv")
        .isDirectoryContaining("glob:**/run-sheets.html")
        .isDirectoryContaining("glob:**/run-sheets.pdf");
    Ran verify = run(folder, "verify", FILES[0], FILES[1], "out/demo/plan.json");
    assertThat(verify.exitCode()).as(verify.out() + verify.err()).isZero();
    assertThat(verify.out()).contains("keeps every rule");
  }

  @Test
  void replacesOnlyWhatADemoWrote(@TempDir Path place) throws IOException {
    String[] small = {"demo", "--jobs", "6", "--write-only"};
    assertThat(run(place, small).exitCode()).isZero();
    assertThat(run(place, "demo", "--jobs", "7", "--write-only").exitCode()).isZero();
    Path floor = place.resolve("out/demo/floor.yaml");
    Files.writeString(floor, "# mine\n" + Files.readString(floor));
    Ran refused = run(place, small);
    assertThat(refused.exitCode()).isEqualTo(2);
    assertThat(refused.err()).contains("floor.yaml", "--overwrite");
    assertThat(Files.readString(floor)).startsWith("# mine");
    assertThat(run(place, "demo", "--jobs", "6", "--write-only", "--overwrite").exitCode())
        .isZero();
  }

  @ParameterizedTest
  @CsvSource({"floor,floor.yaml", "plan,plan.json"})
  void printsASchemaThatAcceptsTheFilesOfTheDemo(String kind, String file) throws IOException {
    Ran schema = run(folder, "schema", kind);
    assertThat(schema.exitCode()).as(schema.err()).isZero();
    JsonNode tree = new YAMLMapper().readTree(folder.resolve("out/demo/" + file).toFile());
    assertThat(compiled(schema.json()).validate(tree)).isEmpty();
    assertThat(compiled(schema.json()).validate(tree.path("rigs"))).isNotEmpty();
  }

  @Test
  void printsASchemaThatAcceptsTheShotListOfTheDemo() throws IOException {
    Ran schema = run(folder, "schema", "shot-list");
    assertThat(schema.exitCode()).as(schema.err()).isZero();
    String shots = ShotJsonWriter.write(Demo.batch().shotList(), Trees.Notation.JSON);
    JsonNode tree = new ObjectMapper().readTree(shots);
    assertThat(tree.path("jobs").size()).isPositive();
    assertThat(compiled(schema.json()).validate(tree)).isEmpty();
  }

  private static Schema compiled(JsonNode schema) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(schema);
  }

  @Test
  void keepsEveryLineWithin80Columns() {
    assertNarrow(demo.out());
    assertNarrow(run(folder, "fit", FILES[0], FILES[1]).out());
    assertNarrow(times("--rig", firstRig()).out());
    assertNarrow(run(folder, "verify", FILES[0], FILES[1], "out/demo/plan.json").out());
  }

  @Test
  void cutsLongNamesInTheSummary(@TempDir Path place) throws IOException {
    run(place, "demo", "--jobs", "6", "--write-only");
    Path shots = place.resolve("out/demo/shot-list.csv");
    String text = Files.readString(shots);
    JsonNode fit = run(place, "fit", FILES[0], FILES[1], "--json").json();
    assertThat(fit.get("jobs").size()).isEqualTo(6);
    String name = secondCell(text, "Name");
    Files.writeString(shots, text.replace(name, "Very long name ".repeat(12) + "灯灯灯灯灯"));
    Ran ran = run(place, "plan", FILES[0], FILES[1], "--first-only", "--out", "x");
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(ran.out()).contains("Very long name", "…");
    assertNarrow(ran.out());
  }

  @Test
  void leavesTheRigsOutOfABriefSummary() {
    Ran brief = run(folder, "plan", FILES[0], FILES[1], "--first-only", "--brief", "--out", "b");
    assertThat(brief.out()).contains("30 jobs planned", "crew", "dispatch rules alone");
    assertThat(brief.out()).doesNotContain("* setup");
    assertThat(demo.out()).contains("* setup");
  }

  @Test
  void answersTheFitCheckForEveryJobAndRig() {
    JsonNode fit = run(folder, "fit", FILES[0], FILES[1], "--json").json();
    assertThat(fit.get("jobs").size()).isEqualTo(30);
    for (JsonNode job : fit.get("jobs")) {
      boolean asked = job.get("unmeasured").isEmpty();
      assertThat(job.get("rigs").size()).isEqualTo(asked ? 6 : 0);
      for (JsonNode rig : job.get("rigs")) {
        assertThat(rig.get("fits").asBoolean()).isEqualTo(rig.get("reasons").isEmpty());
      }
    }
  }

  @Test
  void givesTheFigureNeededAndTheFigureOffered() {
    assertThat(run(folder, "fit", FILES[0], FILES[1]).out()).containsPattern("needed .*, offered ");
  }

  @Test
  void namesTheJobsThereAreWhenOneIsNotThere() {
    Ran ran = run(folder, "fit", FILES[0], FILES[1], "--job", "no-such-job");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("no-such-job", firstJob(), "30 in all");
  }

  @Test
  void addsUpTheTermsOfATime() {
    JsonNode times = times("--rig", firstRig(), "--json").json();
    for (String part : new String[] {"load", "capture", "unload"}) {
      double sum = 0;
      for (JsonNode term : times.get("terms")) {
        sum += term.get("part").asText().equals(part) ? term.get("seconds").asDouble() : 0;
      }
      assertThat(times.get(part).get("seconds").asDouble()).isBetween(sum - 1e-5, sum + 1);
    }
    assertThat(times("--rig", firstRig()).out())
        .contains("load:", "capture:", "unload:", "setup it asks for", "lifting check");
  }

  @Test
  void asksForMeasuresInsteadOfGuessing() throws IOException {
    Files.writeString(
        folder.resolve("unmeasured.csv"),
        "Id,Article,Recipe\nU1,4711,spin-3x36\nU2,4712,spin-3x36\n");
    Ran fit = run(folder, "fit", FILES[0], "unmeasured.csv");
    assertThat(fit.out()).contains("2 need measuring", "needs measuring\n", "massKg missing");
    Ran times =
        run(folder, "times", FILES[0], "unmeasured.csv", "--job", "U1", "--rig", firstRig());
    assertThat(times.exitCode()).isEqualTo(2);
    assertThat(times.err()).contains("U1 needs measuring");
    Ran plan = run(folder, "plan", FILES[0], "unmeasured.csv", "--first-only", "--out", "u");
    assertThat(plan.exitCode()).isEqualTo(3);
    assertThat(plan.out()).contains("0 of 2 jobs planned", "left out\n  U1");
    assertThat(plan.err()).contains("No job could be planned");
  }

  @Test
  void refusesTimesOnARigThatIsNotThere() {
    assertThat(times("--rig", "no-such-rig").exitCode()).isEqualTo(2);
  }

  @Test
  void writesRunSheetsAndAsksBeforeReplacingThem() {
    String[] call = {"runsheets", FILES[0], FILES[1], "out/demo/plan.json", "--out", "sheets.html"};
    Ran first = run(folder, call);
    assertThat(first.exitCode()).as(first.err()).isZero();
    assertThat(folder.resolve("sheets.html")).content().contains("<html", firstJob());
    assertThat(run(folder, call).exitCode()).isEqualTo(2);
  }

  @Test
  void refusesAPlanOfAnotherDay() {
    String[] verify = {"verify", FILES[0], FILES[1], "out/demo/plan.json", "--date", "2026-09-07"};
    Ran ran = run(folder, verify);
    assertThat(ran.exitCode()).as(ran.out() + ran.err()).isEqualTo(2);
    assertThat(ran.err()).contains("plan.json");
  }

  @Test
  void plansTomorrowInTheZoneOfTheFloor() {
    Ran ran = run(folder, "plan", FILES[0], FILES[1], "--dry-run");
    assertThat(ran.out()).contains("would plan 2026-03-04");
  }

  private static Ran times(String... more) {
    String[] call = {"times", FILES[0], FILES[1], "--job", firstJob()};
    String[] all = java.util.Arrays.copyOf(call, call.length + more.length);
    System.arraycopy(more, 0, all, call.length, more.length);
    return run(folder, all);
  }

  private static String firstRig() {
    return fitOfFirstMeasured().get("rigs").get(0).get("rig").asText();
  }

  private static String firstJob() {
    return fitOfFirstMeasured().get("job").asText();
  }

  private static JsonNode fitOfFirstMeasured() {
    for (JsonNode job : run(folder, "fit", FILES[0], FILES[1], "--json").json().get("jobs")) {
      if (job.get("unmeasured").isEmpty()) {
        return job;
      }
    }
    throw new AssertionError("no measured job in the demo");
  }

  private static String secondCell(String csv, String column) {
    String[] lines = csv.replace("\uFEFF", "").split("\\R");
    int index = java.util.List.of(lines[0].split(",")).indexOf(column);
    return lines[1].split(",")[index];
  }

  private static void assertNarrow(String text) {
    assertThat(text).isNotBlank();
    assertThat(text.lines()).allMatch(line -> Text.columns(line) <= 80);
  }
}
