package rigmorrow.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.Main;
import rigmorrow.app.board.whatif.ComparisonDesk;
import rigmorrow.app.board.whatif.ComparisonProgress.State;
import rigmorrow.app.board.whatif.DaySource;
import rigmorrow.app.board.whatif.Look;
import rigmorrow.app.planning.Cores;
import rigmorrow.app.whatif.SmallStudy;

/** A board that is killed while it compares: a real process, since nobody else can be. */
@Timeout(300)
class KilledComparisonTest {
  private static final int PLANS = 24;

  /** So many that the end is far off when the first plans are finished. */
  private static final int STEPS = 20_000;

  private static final Duration PATIENCE = Duration.ofSeconds(120);

  @TempDir Path folder;

  @Test
  void goesOnWhereItWas() throws Exception {
    SmallStudy.write(folder, SmallStudy.days(4, 30), SmallStudy.study());
    Process process = start();
    try {
      Path out = folder.resolve("out.txt");
      await(process, () -> read(out).contains("http://127.0.0.1:"));
      String address = read(out).lines().filter(one -> one.startsWith("http")).findFirst().get();
      await(process, () -> get(address + "api/whatif").contains("\"days\":\"READY\""));
      String chosen =
          send(
              address + "api/whatif/scenarios",
              HttpRequest.newBuilder()
                  .header("X-File-Name", "mine.yaml")
                  .POST(BodyPublishers.ofFile(folder.resolve("scenarios.yaml"))));
      String number = chosen.replaceAll("(?s).*\"scenarios\":\\{\"number\":(\\d+).*", "$1");
      send(
          address + "api/whatif/compare",
          HttpRequest.newBuilder()
              .header("Content-Type", "application/json")
              .POST(
                  BodyPublishers.ofString(
                      "{\"number\":%s,\"steps\":%d,\"seeds\":1,\"demand\":[],\"again\":false,\"oneMore\":false}"
                          .formatted(number, STEPS))));
      await(process, () -> lines().size() >= 2 + 3);
    } finally {
      process.destroyForcibly();
    }
    assertThat(process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)).isTrue();
    List<String> left = lines();
    String program = left.get(0).replaceAll(".*program,([^,]*),.*", "$1").replace("\"", "");
    try (ComparisonDesk again =
        new ComparisonDesk(
            DaySource.folder(folder.resolve("days")),
            folder.resolve("board/whatif"),
            new Cores(),
            program)) {
      await(null, () -> again.look().document() != null);
      Look look = again.look();
      assertThat(look.progress().state()).isEqualTo(State.STOPPED);
      int kept = look.progress().done();
      assertThat(kept).isBetween(3, PLANS - 1);
      assertThat(look.settings().steps()).isEqualTo(STEPS);
      again.begin(look.document().number(), look.settings());
      await(null, () -> again.progress().state() != State.RUNNING);
      assertThat(again.progress().state()).isEqualTo(State.DONE);
      List<String> whole = lines();
      assertThat(whole.subList(0, kept + 2)).isEqualTo(left.subList(0, kept + 2));
      assertThat(whole).hasSize(PLANS + 2);
      assertThat(new HashSet<>(keys(whole))).hasSize(PLANS);
    }
  }

  private static List<String> keys(List<String> lines) {
    return lines.stream().skip(2).map(line -> line.replaceAll("^((?:[^,]*,){4}).*", "$1")).toList();
  }

  private List<String> lines() {
    try (Stream<Path> files = Files.list(folder.resolve("board/whatif"))) {
      Path file =
          files.filter(one -> one.getFileName().toString().startsWith("cells")).findFirst().get();
      return Files.readAllLines(file);
    } catch (java.io.IOException | java.util.NoSuchElementException notYet) {
      return List.of();
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static String get(String address) {
    return send(address, HttpRequest.newBuilder());
  }

  private static String send(String address, HttpRequest.Builder request) {
    try {
      HttpResponse<String> answer =
          HttpClient.newHttpClient()
              .send(request.uri(URI.create(address)).build(), BodyHandlers.ofString());
      assertThat(answer.statusCode()).as(answer.body()).isLessThan(300);
      return answer.body();
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void await(Process process, BooleanSupplier there) throws InterruptedException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (!there.getAsBoolean()) {
      assertThat(process == null || process.isAlive()).as("the board runs").isTrue();
      assertThat(System.nanoTime()).isLessThan(end);
      Thread.sleep(20);
    }
  }

  private Process start() throws Exception {
    Runner.Ran demo = Runner.run(folder, "demo", "--write-only", "--jobs", "9", "--out", "in");
    assertThat(demo.exitCode()).as(demo.err()).isZero();
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            Main.class.getName(),
            "board",
            "in/floor.yaml",
            "in/shot-list.csv",
            "--folder",
            "board",
            "--past-days",
            "days",
            "--port",
            "0");
    return builder
        .directory(folder.toFile())
        .redirectOutput(folder.resolve("out.txt").toFile())
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }
}
