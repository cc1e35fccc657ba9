package rigmorrow.app.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static rigmorrow.app.cli.Runner.onTerminal;
import static rigmorrow.app.cli.Runner.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.app.cli.Runner.Ran;
import rigmorrow.app.terminal.Text;

/** What users expect of a command line; the numbers are those of our list of expectations. */
class ExpectationsTest {
  private static final String[] STEPS = {"--steps", "300"};

  @TempDir static Path folder;

  @BeforeAll
  static void writeFiles() {
    Ran demo = run(folder, "demo", "--write-only", "--jobs", "12", "--out", "in");
    assertThat(demo.exitCode()).as(demo.err()).isZero();
  }

  @Test
  void printsDataToOutAndTheRestToErr() { // 1
    Ran ran = plan("--out", "one");
    assertThat(ran.out()).contains("12 jobs planned", "A plan is advice");
    assertThat(ran.err())
        .contains("written to one: plan.json, plan.csv, run-sheets.html, run-sheets.pdf");
    assertThat(ran.out()).doesNotContain("written to");
  }

  @Test
  void exitsWith0WhenDone() { // 2
    assertThat(plan("--out", "two").exitCode()).isZero();
    assertThat(
            run(folder, "verify", "in/floor.yaml", "in/shot-list.csv", "two/plan.json").exitCode())
        .isZero();
  }

  @Test
  void exitsWith1OnlyForAFaultOfOurs() { // 2
    Clock broken =
        new Clock() {
          @Override
          public ZoneId getZone() {
            return ZoneOffset.UTC;
          }

          @Override
          public Clock withZone(ZoneId zone) {
            return this;
          }

          @Override
          public Instant instant() {
            throw new IllegalStateException("the clock stands still");
          }
        };
    String[] fit = {"fit", "in/floor.yaml", "in/shot-list.csv"};
    Ran ran = run(folder, broken, false, fit);
    assertThat(ran.exitCode()).isEqualTo(1);
    assertThat(ran.err().lines()).hasSize(1).first().asString().contains("--debug");
    Ran debug = run(folder, broken, false, "fit", "in/floor.yaml", "in/shot-list.csv", "--debug");
    assertThat(debug.err()).contains("the clock stands still", "at rigmorrow.app.");
  }

  @Test
  void exitsWith2ForBadInputAndUsage() { // 2
    assertThat(run(folder, "fit", "no-such.yaml", "in/shot-list.csv").exitCode()).isEqualTo(2);
    assertThat(run(folder, "fit", "in/floor.yaml").exitCode()).isEqualTo(2);
    assertThat(plan("--days", "99").exitCode()).isEqualTo(2);
    assertThat(plan("--decimal", "x").exitCode()).isEqualTo(2);
    assertThat(plan("--date", "2026-13-01").err()).contains("accepted: YYYY-MM-DD");
    assertThat(run(folder, "fly").exitCode()).isEqualTo(2);
  }

  @Test
  void exitsWith3ForAPlanThatBreaksRules() throws IOException { // 2
    plan("--out", "three");
    Path plan = folder.resolve("three/plan.json");
    String changed = Files.readString(plan).replaceFirst("(\"lateJobs\"\\s*:\\s*)(\\d+)", "$17$2");
    Files.writeString(plan, changed);
    Ran ran = run(folder, "verify", "in/floor.yaml", "in/shot-list.csv", "three/plan.json");
    assertThat(ran.exitCode()).as(ran.err()).isEqualTo(3);
    assertThat(ran.out()).contains("breaks rules").contains("figures");
  }

  @Test
  void documentsItsExitCodes() { // 2
    assertThat(run(folder, "plan", "--help").out())
        .contains("Exit codes:")
        .containsPattern("(?m)^ *0 +done")
        .containsPattern("(?m)^ *1 +a fault of the program")
        .containsPattern("(?m)^ *2 +something is wrong with an input file")
        .containsPattern("(?m)^ *3 +no workable plan");
  }

  @Test
  void printsOneDocumentWithJson() { // 3
    Ran ran = plan("--json");
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(ran.json().get("version").asInt()).isEqualTo(1);
    assertThat(ran.json().get("rigs").size()).isGreaterThan(1);
    assertThat(ran.json().has("figures")).isTrue();
    assertThat(ran.json().has("leftOut")).isTrue();
    assertThat(ran.json().get("crew").size()).isGreaterThan(1);
  }

  @Test
  void printsOneDocumentForErrorsToo() throws IOException { // 3
    Files.writeString(folder.resolve("bad.csv"), "article,recipe\nA1,no-such-recipe\nA2,\n");
    var error = run(folder, "fit", "in/floor.yaml", "bad.csv", "--json").json().get("error");
    assertThat(error.get("exitCode").asInt()).isEqualTo(2);
    assertThat(error.get("problems").size()).isGreaterThanOrEqualTo(2);
    assertThat(error.get("problems").get(0).fieldNames())
        .toIterable()
        .containsExactly("file", "where", "field", "value", "accepted");
    var usage = run(folder, "plan", "--json", "--tme", "5").json().get("error");
    assertThat(usage.get("exitCode").asInt()).isEqualTo(2);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plan",
        "fit",
        "times",
        "verify",
        "runsheets",
        "schema",
        "completion",
        "demo",
        "board"
      })
  void givesOneDocumentWhateverIsAskedInAWrongWay(String command) { // 3
    Ran ran = run(folder, command, "--json", "--no-such-option");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.json().get("error").get("exitCode").asInt()).isEqualTo(2);
  }

  @Test
  void givesACompletionScriptInADocumentToo() { // 3
    Ran ran = run(folder, "completion", "bash", "--json");
    assertThat(ran.json().get("script").asText()).contains("complete -F");
  }

  @Test
  void tellsAllProblemsOfAFileAtOnce() throws IOException {
    Files.writeString(folder.resolve("bad.csv"), "article,recipe\nA1,no-such-recipe\nA2,\n");
    Ran ran = run(folder, "fit", "in/floor.yaml", "bad.csv");
    assertThat(ran.err()).contains("bad.csv: 2 problems", "row 2", "row 3");
    assertThat(ran.out()).isEmpty();
  }

  @Test
  void showsProgressOnATerminalOnly() { // 4
    Ran seen =
        onTerminal(
            folder,
            "plan",
            "in/floor.yaml",
            "in/shot-list.csv",
            "--steps",
            "300",
            "--out",
            "four-a");
    assertThat(seen.err()).contains("\r").contains(" planned, ");
    assertThat(plan("--out", "four-b").err()).doesNotContain("\r");
  }

  @Test
  void coloursOnATerminalOnly() { // 5
    Ran seen =
        onTerminal(
            folder,
            "plan",
            "in/floor.yaml",
            "in/shot-list.csv",
            "--steps",
            "300",
            "--out",
            "five-a");
    assertThat(seen.out()).contains("\u001b[");
    assertThat(plan("--out", "five-b").out()).doesNotContain("\u001b");
    assertThat(plan("--out", "five-c", "--no-color").exitCode()).isZero();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "demo",
        "import",
        "plan",
        "board",
        "fit",
        "times",
        "verify",
        "explain",
        "runsheets",
        "calendar",
        "labels",
        "schema",
        "completion"
      })
  void leadsHelpWithExamples(String command) { // 6
    Ran ran = command.isEmpty() ? run(folder, "--help") : run(folder, command, "--help");
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.out()).startsWith("Examples:\n  rigmorrow ").contains("Usage: rigmorrow");
    assertThat(ran.out().lines()).allMatch(line -> Text.columns(line) <= 80);
  }

  @ParameterizedTest
  @CsvSource({
    "pln,plan",
    "verfy,verify",
    "runsheet,runsheets",
    "calender,calendar",
    "label,labels",
    "imprt,import"
  })
  void suggestsWhatATypoMeant(String typo, String meant) { // 6
    Ran ran = run(folder, typo);
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("Did you mean").contains("rigmorrow " + meant);
  }

  @Test
  void suggestsTheOptionATypoMeant() { // 6
    Ran ran = run(folder, "plan", "a", "b", "--tiem", "5");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("--time");
  }

  @Test
  void suggestsEveryOptionThatIsMisspelled() { // 6
    Ran ran = run(folder, "fit", "a", "b", "--jobb", "J1", "--noo-color");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("Did you mean: --job or --no-color?");
  }

  @Test
  void tellsAMisspelledOptionBesideMissingFiles() { // 6
    Ran ran = run(folder, "plan", "--overwrit");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("FLOOR", "Unknown option: '--overwrit'", "--overwrite?");
  }

  @Test
  void saysWhichNumbersAreAccepted() {
    assertThat(plan("--time", "abc").err()).contains("--time", "'abc'; accepted: a whole number");
  }

  @Test
  void keepsAProblemOnOneLineExceptOnATerminal() throws IOException {
    String recipe = "no-such-recipe-but-a-rather-long-name";
    Files.writeString(folder.resolve("long.csv"), "article,recipe\nA1," + recipe + "\n");
    String[] fit = {"fit", "in/floor.yaml", "long.csv"};
    assertThat(run(folder, fit).err().lines()).anyMatch(line -> line.length() > 80);
    assertThat(onTerminal(folder, fit).err().lines()).allMatch(line -> Text.columns(line) <= 80);
  }

  @ParameterizedTest
  @ValueSource(strings = {"bash", "zsh"})
  void completesInTheShell(String shell) throws Exception { // 7
    Ran ran = run(folder, "completion", shell);
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.out()).contains("runsheets", "calendar", "labels", "--overwrite", "complete -F");
    Path script = Files.writeString(folder.resolve("completion." + shell), ran.out());
    Process bash = new ProcessBuilder("bash", "-n", script.toString()).inheritIO().start();
    assertThat(bash.waitFor()).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "rigmorrow ver,verify",
    "rigmorrow plan --overw,--overwrite",
    "rigmorrow completion b,bash",
    "rigmorrow schema sh,shot-list",
  })
  void completesWhatWasTyped(String typed, String completed) throws Exception { // 7
    Ran ran = run(folder, "completion", "bash");
    String words = String.join(" ", typed.split(" "));
    String script =
        ran.out()
            + "\nCOMP_WORDS=(%s); COMP_CWORD=%d; COMP_LINE='%s'; COMP_POINT=%d\n"
                .formatted(words, typed.split(" ").length - 1, typed, typed.length())
            + "_complete_rigmorrow; printf '%s\\n' \"${COMPREPLY[@]}\"\n";
    Path file = Files.writeString(folder.resolve("complete.sh"), script);
    Process bash = new ProcessBuilder("bash", file.toString()).redirectErrorStream(true).start();
    String replies = new String(bash.getInputStream().readAllBytes(), UTF_8);
    assertThat(bash.waitFor()).as(replies).isZero();
    assertThat(replies.lines().map(String::strip)).contains(completed);
  }

  @Test
  void needsAWordToOverwrite() throws IOException { // 10
    assertThat(plan("--out", "ten").exitCode()).isZero();
    String before = Files.readString(folder.resolve("ten/plan.json"));
    Ran refused = plan("--out", "ten", "--seed", "5");
    assertThat(refused.exitCode()).isEqualTo(2);
    assertThat(refused.err()).contains("plan.json", "plan.csv", "run-sheets.html", "--overwrite");
    assertThat(Files.readString(folder.resolve("ten/plan.json"))).isEqualTo(before);
    assertThat(plan("--out", "ten", "--seed", "5", "--overwrite").exitCode()).isZero();
    assertThat(Files.readString(folder.resolve("ten/plan.json"))).isNotEqualTo(before);
  }

  @Test
  void canRunDry() { // 10
    Ran ran = plan("--out", "dry", "--dry-run");
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.out()).contains("12 jobs", "would write to dry", "nothing was planned");
    assertThat(folder.resolve("dry")).doesNotExist();
  }

  @Test
  void leavesNothingBehindWhenTheInputIsBad() {
    assertThat(run(folder, "plan", "in/floor.yaml", "no-such.csv", "--out", "none").exitCode())
        .isEqualTo(2);
    assertThat(folder.resolve("none")).doesNotExist();
  }

  @Test
  void givesTheSamePlanForTheSameSeedAndSteps() {
    assertThat(plan("--json").out()).isEqualTo(plan("--json").out());
  }

  private static Ran plan(String... more) {
    List<String> arguments = new ArrayList<>(List.of("plan", "in/floor.yaml", "in/shot-list.csv"));
    arguments.addAll(List.of(STEPS));
    arguments.addAll(List.of(more));
    return run(folder, arguments.toArray(String[]::new));
  }
}
