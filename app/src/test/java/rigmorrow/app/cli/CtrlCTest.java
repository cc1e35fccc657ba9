package rigmorrow.app.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.app.Main;
import rigmorrow.app.cli.Runner.Ran;

/** Signals end a real process, so this runs one. */
class CtrlCTest {
  private static final int PATIENCE_SECONDS = 60;

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"INT", "TERM"})
  void keepsTheBestPlan(String signal) throws Exception { // expectation 9
    assertThat(Runner.run(folder, "demo", "--jobs", "12", "--write-only").exitCode()).isZero();
    Process process =
        start("plan", "out/demo/floor.yaml", "out/demo/shot-list.csv", "--time", "600");
    try (BufferedReader err =
        new BufferedReader(new InputStreamReader(process.getErrorStream(), UTF_8))) {
      String line = err.readLine();
      while (line != null && !line.startsWith("planning ")) {
        line = err.readLine();
      }
      assertThat(line).contains("Ctrl-C keeps the best plan");
      String pid = Long.toString(process.pid());
      assertThat(new ProcessBuilder("kill", "-" + signal, pid).start().waitFor()).isZero();
      assertThat(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
      String rest = err.lines().collect(Collectors.joining("\n"));
      assertThat(rest).contains("stopped early; best plan kept");
      assertThat(process.exitValue()).as(rest).isZero();
    } finally {
      process.destroyForcibly();
    }
    String[] written;
    try (var days = java.nio.file.Files.list(folder.resolve("out"))) {
      written =
          days.map(day -> day.getFileName().toString())
              .filter(day -> !day.equals("demo"))
              .toArray(String[]::new);
    }
    assertThat(written).hasSize(1);
    String plan = "out/" + written[0] + "/plan.json";
    Ran verify =
        Runner.run(folder, "verify", "out/demo/floor.yaml", "out/demo/shot-list.csv", plan);
    assertThat(verify.exitCode()).as(verify.out() + verify.err()).isZero();
  }

  @ParameterizedTest
  @ValueSource(strings = {"INT", "TERM"})
  void endsABoardInOrder(String signal) throws Exception {
    Process process = start("board", "--demo", "--port", "0");
    try (BufferedReader err =
        new BufferedReader(new InputStreamReader(process.getErrorStream(), UTF_8))) {
      assertThat(err.readLine()).contains("until Ctrl-C");
      String pid = Long.toString(process.pid());
      assertThat(new ProcessBuilder("kill", "-" + signal, pid).start().waitFor()).isZero();
      assertThat(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
      String rest = err.lines().collect(Collectors.joining("\n"));
      assertThat(rest).isEqualTo("the board ends; everything that was kept is stored");
      assertThat(process.exitValue()).isZero();
    } finally {
      process.destroyForcibly();
    }
    try (var files = java.nio.file.Files.list(folder.resolve("out/board-demo"))) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .contains("board.sqlite")
          .noneMatch(name -> name.endsWith("-wal"));
    }
  }

  private Process start(String... arguments) throws Exception {
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            Main.class.getName());
    builder.command().addAll(java.util.List.of(arguments));
    return builder
        .directory(folder.toFile())
        .redirectOutput(folder.resolve("out.txt").toFile())
        .start();
  }
}
