package rigmorrow.app.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static rigmorrow.app.cli.Runner.run;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.app.cli.Runner.Ran;
import rigmorrow.app.terminal.Console;
import rigmorrow.app.terminal.EarlyStop;
import rigmorrow.app.terminal.Session;

/** Folders, days and streams that cannot be used, and plans of several days. */
class CommandEdgesTest {
  private static final String FLOOR = "in/floor.yaml";
  private static final String SHOTS = "in/shot-list.csv";

  /** Not even a superuser may add to it. */
  private static final String UNWRITABLE = "/proc/sys";

  @TempDir static Path folder;

  @BeforeAll
  static void writeFiles() {
    Ran demo = run(folder, "demo", "--steps", "50", "--jobs", "12", "--out", "in");
    assertThat(demo.exitCode()).as(demo.err()).isZero();
  }

  @Test
  void namesAFolderThatCannotBeWrittenToBeforeItPlans() {
    String out = UNWRITABLE + "/plan";
    Ran plan = run(folder, "plan", FLOOR, SHOTS, "--first-only", "--out", out);
    Ran demo = run(folder, "demo", "--first-only", "--out", out);
    for (Ran ran : List.of(plan, demo)) {
      assertThat(ran.exitCode()).isEqualTo(2);
      assertThat(ran.err()).contains(UNWRITABLE + ": cannot be written to").doesNotContain("plann");
    }
  }

  @Test
  void leavesNothingBehindWhereItOnlyLooks() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    assertThat(run(folder, "plan", FLOOR, SHOTS, "--dry-run", "--out", "empty").exitCode())
        .isZero();
    assertThat(empty).isEmptyDirectory();
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "32", "-1"})
  void refusesDaysOutsideTheirBoundsInEveryCommand(String days) {
    String plan = "in/plan.json";
    List<Ran> all =
        List.of(
            run(folder, "plan", FLOOR, SHOTS, "--days", days),
            run(folder, "fit", FLOOR, SHOTS, "--days", days),
            run(folder, "times", FLOOR, SHOTS, "--job", "x", "--rig", "y", "--days", days),
            run(folder, "verify", FLOOR, SHOTS, plan, "--days", days),
            run(folder, "runsheets", FLOOR, SHOTS, plan, "--out", "s.html", "--days", days),
            run(folder, "calendar", FLOOR, SHOTS, plan, "--out", "s", "--days", days),
            run(folder, "labels", FLOOR, SHOTS, "--out", "s.html", "--days", days));
    for (Ran ran : all) {
      assertThat(ran.exitCode()).isEqualTo(2);
      assertThat(ran.err()).contains("--days is " + days + "; accepted: 1 to 31");
    }
  }

  @Test
  void saysThatStandardOutputCouldNotBeWritten() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int octet) throws IOException {
            throw new IOException("No space left on device");
          }
        };
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console =
        Console.plain(new PrintStream(full, true, UTF_8), new PrintStream(err, true, UTF_8));
    Session session = new Session(console, new EarlyStop(), Runner.CLOCK, folder);
    int exitCode =
        RigmorrowCommand.run(List.of("fit", FLOOR, SHOTS), session, () -> new String[] {"test"});
    assertThat(exitCode).isEqualTo(1);
    assertThat(err.toString(UTF_8)).contains("Standard output could not be written");
  }

  @Test
  void datesTheEndOfAPlanOfSeveralDaysAndTellsPromisesBeforeIt() {
    Ran ran =
        run(
            folder,
            "plan",
            FLOOR,
            SHOTS,
            "--first-only",
            "--out",
            "late",
            "--date",
            "2026-03-09",
            "--days",
            "3");
    assertThat(ran.out())
        .containsPattern("done\\s+\\w{3}\\s+2026-03-\\d\\d\\s+\\d\\d:\\d\\d")
        .containsPattern("\\d days?( \\d+ h)? late");
    assertThat(ran.err().lines())
        .filteredOn(line -> line.matches("\\d+ promises? lies? before the first planned day .*"))
        .singleElement()
        .asString()
        .endsWith(" 2026-03-09");
    assertThat(run(folder, "plan", FLOOR, SHOTS, "--dry-run", "--out", "x").err())
        .doesNotContain("before the first planned day");
  }

  @Test
  void saysWhyAMustPromiseThatNothingCanKeepIsLeftOut() throws IOException {
    String head = "id,recipe,length mm,width mm,height mm,mass kg,due,must\n";
    String recipe = "stills";
    String job = "A1," + recipe + ",200,150,100,1,2026-11-26 07:01,yes\n";
    Files.writeString(folder.resolve("must.csv"), head + job);
    Ran ran =
        run(
            folder,
            "plan",
            FLOOR,
            "must.csv",
            "--date",
            "2026-11-26",
            "--steps",
            "50",
            "--out",
            "m");
    assertThat(ran.out())
        .contains("1 must-promise cannot be kept")
        .contains("A1 (must-promise)")
        .contains("Its must-promise is", "with nothing else planned")
        .doesNotContain("beside the others");
    assertThat(ran.exitCode()).as("no script takes it for a plan that does all").isEqualTo(3);
    assertThat(ran.err())
        .contains("must-promise not kept: A1 A1, due 2026-11-26 07:01, is left out: Its must-");
    assertThat(folder.resolve("m/plan.json")).isNotEmptyFile();
    Ran verified = run(folder, "verify", FLOOR, "must.csv", "m/plan.json", "--date", "2026-11-26");
    assertThat(verified.exitCode()).as("nor does verify let it pass").isEqualTo(3);
    assertThat(verified.err()).contains("must-promise not kept: A1 A1");
    Ran kept =
        run(
            folder,
            "plan",
            FLOOR,
            "must.csv",
            "--date",
            "2026-11-25",
            "--days",
            "2",
            "--json",
            "--steps",
            "50");
    assertThat(kept.exitCode()).as(kept.err()).isZero();
    assertThat(kept.err()).doesNotContain("must-promise");
  }

  @Test
  void takesAMustThatIsLeftOutByHandForADecision() throws IOException {
    String list =
        """
        {"version": 1, "date": "2026-11-25", "days": 2, "heldBack": ["A1"], "jobs": [
          {"id": "A1", "recipe": "stills", "lengthMm": 200, "widthMm": 150, "heightMm": 100,
           "massKg": 1, "dueAt": "2026-11-26T07:01", "must": true},
          {"id": "A2", "recipe": "stills", "lengthMm": 200, "widthMm": 150, "heightMm": 100,
           "massKg": 1}]}
        """;
    Files.writeString(folder.resolve("held.json"), list);
    Ran ran = run(folder, "plan", FLOOR, "held.json", "--first-only", "--json");
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(ran.err())
        .contains("must-promise not kept: A1 A1, due")
        .contains("left out by hand");
  }

  @Test
  void claimsNoMoreIndependenceThanTheCheckHas() {
    assertThat(run(folder, "verify", "--help").out().replaceAll("\\s+", " "))
        .contains("shares no timeline code with the search");
  }
}
