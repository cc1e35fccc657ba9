package rigmorrow.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static rigmorrow.app.cli.Runner.run;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.cli.Runner.Ran;
import rigmorrow.app.terminal.Text;

class ExplainCommandTest {
  @TempDir static Path folder;
  private static JsonNode plan;

  @BeforeAll
  static void planADay() throws IOException {
    String[] demo = {"demo", "--jobs", "40", "--seed", "2", "--steps", "300", "--out", "in"};
    assertThat(run(folder, demo).exitCode()).isZero();
    plan =
        new com.fasterxml.jackson.databind.ObjectMapper()
            .readTree(folder.resolve("in/plan.json").toFile());
  }

  @Test
  void tellsWhereWhenAndWhatElse() {
    Ran ran = explain("--job", planned());
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(ran.out())
        .startsWith(planned() + " ")
        .contains("its pictures are taken by", "Rigs, every place tried", "What holds for it")
        .contains("If nothing else were planned")
        .contains("A plan is advice");
    assertThat(ran.out().lines()).allMatch(line -> Text.columns(line) <= 80);
  }

  @Test
  void tellsEveryJobWithinTheWidthOfATerminal() {
    for (JsonNode rig : plan.get("rigs")) {
      for (JsonNode job : rig.path("jobs")) {
        Ran ran = explain("--job", job.get("job").asText());
        assertThat(ran.exitCode()).as(ran.err()).isZero();
        assertThat(ran.out().lines()).allMatch(line -> Text.columns(line) <= 80);
        assertThat(ran.out()).doesNotContain("null", " 0 s ", "instead of on time late");
      }
    }
  }

  @Test
  void tellsOneRigOnly() {
    String other = plan.get("rigs").get(1).get("rig").asText();
    JsonNode answer = explain("--job", planned(), "--rig", other, "--json").json();
    assertThat(answer.get("rigs").size()).isEqualTo(1);
    assertThat(answer.get("rigs").get(0).get("rig").asText()).isEqualTo(other);
    assertThat(explain("--job", planned(), "--rig", "R99").exitCode()).isEqualTo(2);
    assertThat(explain("--rig", other).err()).contains("--rig together with --job");
  }

  @Test
  void printsTheSameInJson() {
    JsonNode answer = explain("--job", planned(), "--json").json();
    assertThat(answer.get("version").asInt()).isEqualTo(1);
    assertThat(answer.fieldNames())
        .toIterable()
        .containsExactly(
            "version",
            "job",
            "name",
            "status",
            "differing",
            "unmeasured",
            "rules",
            "cost",
            "times",
            "before",
            "after",
            "waits",
            "rigs",
            "changes",
            "sections");
    assertThat(answer.get("times").get("startsAt").asText())
        .isEqualTo(firstStart(plan.get("rigs").get(0).get("jobs").get(0)));
    assertThat(answer.get("cost").get("lateSeconds").asLong())
        .isEqualTo(plan.get("figures").get("lateSeconds").asLong());
    List<String> kinds = new ArrayList<>();
    answer.get("changes").forEach(one -> kinds.add(one.get("kind").asText()));
    assertThat(kinds).contains("ONE_MORE_OPERATOR", "ALONE");
  }

  @Test
  void listsWhatIsLateOrLeftOut() throws IOException {
    Path shots = folder.resolve("in/shot-list.csv");
    String[] lines = Files.readString(shots).split("\r?\n");
    List<String> heads = List.of(lines[0].split(","));
    String[] cells = lines[1].split(",", -1);
    cells[heads.indexOf("Length (mm)")] = "9000";
    lines[1] = String.join(",", cells);
    cells = lines[2].split(",", -1);
    cells[heads.indexOf("Mass (kg)")] = "";
    lines[2] = String.join(",", cells);
    Files.writeString(folder.resolve("odd.csv"), String.join("\n", lines) + "\n");
    String[] day = {"--date", plan.get("date").asText()};
    run(folder, "plan", "in/floor.yaml", "odd.csv", "--first-only", "--out", "odd", day[0], day[1]);
    String[] call = {"explain", "in/floor.yaml", "odd.csv", "odd/plan.json"};
    Ran ran = run(folder, call);
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(ran.out())
        .contains("left out; no rig can take it.")
        .contains("left out; it needs measuring.")
        .contains("late or left out; --job ID says more about one.");
    assertThat(ran.out().lines()).allMatch(line -> Text.columns(line) <= 80);
    JsonNode list = run(folder, join(call, "--json")).json().get("troubles");
    assertThat(list.size()).isGreaterThanOrEqualTo(2);
    for (JsonNode trouble : list) {
      Ran one = run(folder, join(call, "--job", trouble.get("job").asText()));
      assertThat(one.exitCode()).as(one.err()).isZero();
    }
  }

  @Test
  void suggestsTheJobThatWasMeant() {
    String typo = planned() + "x";
    Ran ran = explain("--job", typo);
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("no '" + typo + "'", "did you mean " + planned() + "?");
  }

  @Test
  void refusesAPlanOfAnotherShotList() {
    String[] demo = {"demo", "--jobs", "5", "--write-only", "--out", "few"};
    assertThat(run(folder, demo).exitCode()).isZero();
    Ran ran = run(folder, "explain", "in/floor.yaml", "few/shot-list.csv", "in/plan.json");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err())
        .contains("plan.json", "jobs that the shot list has not", "a plan of this floor");
    assertThat(ran.out()).isEmpty();
  }

  private static String firstStart(JsonNode job) {
    JsonNode first = job.has("changeover") ? job.get("changeover") : job.get("load");
    return first.get("startsAt").asText();
  }

  private static String planned() {
    return plan.get("rigs").get(0).get("jobs").get(0).get("job").asText();
  }

  private static Ran explain(String... more) {
    return run(
        folder,
        join(new String[] {"explain", "in/floor.yaml", "in/shot-list.csv", "in/plan.json"}, more));
  }

  private static String[] join(String[] first, String... more) {
    List<String> all = new ArrayList<>(List.of(first));
    all.addAll(List.of(more));
    return all.toArray(String[]::new);
  }
}
