package rigmorrow.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static rigmorrow.app.cli.Runner.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.cli.Runner.Ran;

/** A job that the shot list leaves out by hand, from the file to what is printed. */
class HeldBackTest {
  private static final String FLOOR = "in/floor.yaml";
  private static final String LIST = "in/held.json";
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir static Path folder;
  private static String held;

  @BeforeAll
  static void leaveAJobOut() throws IOException {
    assertThat(run(folder, "demo", "--jobs", "14", "--first-only", "--out", "in").exitCode())
        .isZero();
    assertThat(run(folder, "import", FLOOR, "in/shot-list.csv", "--out", LIST).exitCode()).isZero();
    JsonNode plan = JSON.readTree(folder.resolve("in/plan.json").toFile());
    held = plan.get("rigs").get(0).get("jobs").get(0).get("job").asText();
    Path list = folder.resolve(LIST);
    ObjectNode tree = (ObjectNode) JSON.readTree(list.toFile());
    tree.putArray("heldBack").add(held);
    Files.writeString(list, JSON.writeValueAsString(tree));
    Ran planned = run(folder, "plan", FLOOR, LIST, "--first-only", "--out", "out");
    assertThat(planned.exitCode()).as(planned.err()).isZero();
    assertThat(planned.out()).contains(held).contains("It is left out by hand.");
  }

  @Test
  void isNotPlannedAndSaysWhy() throws IOException {
    JsonNode plan = JSON.readTree(folder.resolve("out/plan.json").toFile());
    assertThat(plan.get("leftOut").get(0).get("job").asText()).isEqualTo(held);
    assertThat(plan.get("leftOut").get(0).get("cause").asText()).isEqualTo("held-back");
    assertThat(run(folder, "verify", FLOOR, LIST, "out/plan.json").exitCode()).isZero();
    assertThat(folder.resolve("out/run-sheets.html")).content().contains("Left out by hand");
  }

  @Test
  void isABreachInAPlanThatHasIt() {
    Ran ran = run(folder, "verify", FLOOR, LIST, "in/plan.json");
    assertThat(ran.exitCode()).isEqualTo(3);
    assertThat(ran.err() + ran.out())
        .contains("Job " + held + " is planned, but left out by hand.");
    Ran explain = run(folder, "explain", FLOOR, LIST, "in/plan.json", "--job", held);
    assertThat(explain.exitCode()).isEqualTo(2);
    assertThat(explain.err()).contains("left out by hand: " + held);
  }

  @Test
  void isExplainedAsIfItWereTakenIn() {
    String text = run(folder, "explain", FLOOR, LIST, "out/plan.json", "--job", held).out();
    String words = text.replaceAll("\\s+", " ");
    assertThat(words)
        .contains("left out by hand")
        .contains("no search plans it until it is taken in")
        .doesNotContain("The search has not found", "A better plan is one move away");
    String all = run(folder, "explain", FLOOR, LIST, "out/plan.json").out();
    assertThat(all.replaceAll("\\s+", " "))
        .contains(": left out by hand; the best of ")
        .contains("breaks no rule.");
  }
}
