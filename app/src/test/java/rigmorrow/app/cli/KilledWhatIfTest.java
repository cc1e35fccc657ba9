package rigmorrow.app.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.Main;
import rigmorrow.app.cli.Runner.Ran;
import rigmorrow.app.whatif.SmallStudy;

/** A comparison that is killed or stopped half-way: a real process, since nobody else can be. */
class KilledWhatIfTest {
  private static final int PATIENCE_SECONDS = 120;
  private static final int PLANS = 48;

  /** So many that a plan takes a while, and the end is far off when the first are finished. */
  private static final String[] ARGUMENTS = {
    "whatif", "scenarios.yaml", "days", "--steps", "3000", "--report", "csv", "--out", "out"
  };

  @TempDir Path folder;

  @BeforeEach
  void writeFiles() {
    SmallStudy.write(folder, SmallStudy.days(8, 30), SmallStudy.study());
  }

  private Path cells() {
    return folder.resolve("out/cells.csv");
  }

  private List<String> lines() throws Exception {
    return Files.exists(cells()) ? Files.readAllLines(cells()) : List.of();
  }

  @Test
  void repeatsNoFinishedPlanAfterAKill() throws Exception {
    Process process = start();
    await(process, 5);
    process.destroyForcibly();
    assertThat(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).isNotZero();
    String text = Files.readString(cells());
    List<String> finished = text.substring(0, text.lastIndexOf('\n')).lines().toList();
    int kept = finished.size() - 2;
    assertThat(kept).isBetween(5, PLANS - 1);
    asOfTestsVersion();
    finished = lines().subList(0, finished.size());
    Ran ran = Runner.run(folder, ARGUMENTS);
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(ran.err()).contains(kept + " of " + PLANS + " plans were there already");
    List<String> whole = lines();
    assertThat(whole.subList(0, finished.size())).isEqualTo(finished);
    assertThat(whole).hasSize(PLANS + 2);
    List<String> keys = new ArrayList<>();
    whole
        .subList(2, whole.size())
        .forEach(line -> keys.add(line.replaceAll("^((?:[^,]*,){4}).*", "$1")));
    assertThat(new HashSet<>(keys)).hasSize(PLANS);
  }

  @Test
  void keepsWhatIsFinishedWhenItIsStopped() throws Exception {
    Process process = start();
    try (BufferedReader err =
        new BufferedReader(new InputStreamReader(process.getErrorStream(), UTF_8))) {
      await(process, 8);
      String pid = Long.toString(process.pid());
      assertThat(new ProcessBuilder("kill", "-INT", pid).start().waitFor()).isZero();
      assertThat(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
      String rest = err.lines().collect(Collectors.joining("\n"));
      assertThat(process.exitValue()).as(rest).isZero();
      assertThat(rest)
          .containsPattern("stopped early: \\d+ of 48 plans are kept; the same command goes on")
          .contains("written to out: cells.csv, summary.csv");
    } finally {
      process.destroyForcibly();
    }
    assertThat(folder.resolve("out/summary.csv")).isNotEmptyFile();
    assertThat(Files.readString(cells())).endsWith("\n");
    assertThat(lines().size()).isBetween(10, PLANS + 1);
  }

  /** The version is part of a run, and the build's is not that of tests. */
  private void asOfTestsVersion() throws Exception {
    String head = lines().get(0);
    String program = head.replaceAll(".*program,([^,]*),.*", "$1").replace("\"", "");
    Files.writeString(cells(), Files.readString(cells()).replace(program, "rigmorrow test"));
  }

  private void await(Process process, int plans) throws Exception {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
    while (lines().size() < plans + 2) {
      assertThat(process.isAlive()).as("ended with " + lines().size() + " lines").isTrue();
      assertThat(System.nanoTime()).isLessThan(end);
      Thread.sleep(20);
    }
  }

  private Process start() throws Exception {
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            Main.class.getName());
    builder.command().addAll(List.of(ARGUMENTS));
    return builder
        .directory(folder.toFile())
        .redirectOutput(folder.resolve("out.txt").toFile())
        .start();
  }
}
