package rigmorrow.app.board.server;

import static org.assertj.core.api.Assertions.assertThat;
import static rigmorrow.app.board.server.TestBoard.json;
import static rigmorrow.app.board.server.TestBoard.message;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.BufferedReader;
import java.net.http.HttpResponse;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.board.whatif.DaySource;
import rigmorrow.app.whatif.SmallStudy;
import rigmorrow.data.demo.Demo;

/** Plans that a comparison has from before, where their file cannot be used. */
@Timeout(120)
class KeptPlansTest {
  private static final int PLANS = 12;
  private static final String DAMAGED = "'; accepted: a file of cells, or none";

  @TempDir static Path past;
  @TempDir Path folder;

  @BeforeAll
  static void writeDays() {
    SmallStudy.write(past, SmallStudy.days(2, 8), SmallStudy.study());
  }

  private TestBoard open() throws InterruptedException {
    DaySource days = DaySource.folder(past.resolve("days"));
    TestBoard board = TestBoard.open(folder, Demo.batch(6, 1, TestBoard.DAY), null, days);
    TestBoard.await(() -> !look(board).path("days").asText().equals("READING"));
    return board;
  }

  private static JsonNode look(TestBoard board) {
    return json(board.get("/api/whatif"));
  }

  private static JsonNode bring(TestBoard board) throws Exception {
    byte[] file = Files.readAllBytes(past.resolve("scenarios.yaml"));
    HttpResponse<byte[]> answer = board.dropAt("/api/whatif/scenarios", "mine.yaml", file);
    assertThat(answer.statusCode()).as(message(answer)).isEqualTo(200);
    return json(answer);
  }

  private static HttpResponse<byte[]> wish(TestBoard board, String path, String demand) {
    return board.post(
        "/api/whatif/" + path,
        "{\"number\":%d,\"steps\":60,\"seeds\":1,\"demand\":[%s],\"again\":false,\"oneMore\":false}"
            .formatted(look(board).at("/scenarios/number").asLong(), demand));
  }

  private static JsonNode compared(TestBoard board) throws InterruptedException {
    HttpResponse<byte[]> answer = wish(board, "compare", "");
    assertThat(answer.statusCode()).as(message(answer)).isEqualTo(202);
    TestBoard.await(() -> !look(board).at("/comparison/state").asText().equals("RUNNING"));
    return look(board);
  }

  private static String estimated(TestBoard board) {
    HttpResponse<byte[]> answer = wish(board, "estimate", "");
    assertThat(answer.statusCode()).as(message(answer)).isEqualTo(200);
    return json(answer).path("sentence").asText();
  }

  private List<Path> cells() throws Exception {
    try (Stream<Path> files = Files.list(folder.resolve("whatif"))) {
      return files.filter(file -> file.getFileName().toString().startsWith("cells-")).toList();
    }
  }

  @Test
  void takesScenariosWhosePlansNobodyCanReadAndPutsThemAside() throws Exception {
    try (TestBoard board = open()) {
      bring(board);
      assertThat(compared(board).at("/comparison/done").asInt()).isEqualTo(PLANS);
      Path file = cells().get(0);
      String damaged = Files.readString(file).replaceFirst("rigmorrow cells", "rigmxrrow cells");
      Files.writeString(file, damaged);
      JsonNode taken = bring(board);
      assertThat(taken.path("refused").isNull()).isTrue();
      assertThat(taken.at("/comparison/state").asText()).isEqualTo("NONE");
      assertThat(taken.path("note").asText()).contains("" + file.getFileName(), DAMAGED);
      assertThat(estimated(board)).contains(DAMAGED, "puts the file aside");
      assertThat(file).hasContent(damaged);
      JsonNode anew = compared(board);
      assertThat(anew.at("/comparison/state").asText()).isEqualTo("DONE");
      String aside = ("" + file.getFileName()).replace(".csv", ".damaged-1.csv");
      assertThat(anew.path("note").asText())
          .startsWith(file.getFileName() + " is damaged, row 1: 'rigmxrrow cells")
          .endsWith("; it was put aside as " + aside + ", and all plans are made anew.");
      assertThat(file.resolveSibling(aside)).hasContent(damaged);
      assertThat(Files.readAllLines(file)).hasSize(PLANS + 2);
      assertThat(bring(board).path("note").asText()).isEmpty();
    }
  }

  @Test
  void usesWhatIsGoodOfAFileThatIsDamagedInPart() throws Exception {
    try (TestBoard board = open()) {
      bring(board);
      compared(board);
    }
    Path file = cells().get(0);
    List<String> whole = Files.readAllLines(file);
    List<String> lines = new ArrayList<>(whole);
    lines.set(4, "a,b");
    lines.set(7, "\"" + lines.get(7));
    String damaged = String.join("\n", lines) + "\n";
    Files.writeString(file, damaged);
    try (TestBoard board = open()) {
      JsonNode look = look(board);
      assertThat(look.at("/scenarios/fileName").asText()).isEqualTo("mine.yaml");
      String note = "2 plans in " + file.getFileName() + " are damaged and lost.";
      assertThat(look.path("note").asText())
          .startsWith(note)
          .endsWith("uses the other plans and makes these anew.");
      assertThat(look.at("/comparison/done").asInt()).isEqualTo(PLANS - 2);
      assertThat(estimated(board)).contains(note, "Of 12 plans 10 are there already");
      assertThat(file).hasContent(damaged);
      JsonNode done = compared(board);
      assertThat(done.at("/comparison/state").asText()).isEqualTo("DONE");
      String copy = ("" + file.getFileName()).replace(".csv", ".damaged-1.csv");
      assertThat(done.path("note").asText())
          .isEqualTo(
              "%s was damaged: 2 of 12 cells are lost, and planned anew where they are needed; the file as it was is kept as %s."
                  .formatted(file.getFileName(), copy));
      assertThat(file.resolveSibling(copy)).hasContent(damaged);
      lines.removeAll(List.of(lines.get(4), lines.get(7)));
      assertThat(Files.readAllLines(file))
          .hasSize(PLANS + 2)
          .startsWith(lines.toArray(new String[0]));
      assertThat(bring(board).path("note").asText()).isEmpty();
    }
  }

  /** As after a change of the program that its version does not show. */
  @Test
  void doesNotUsePlansOfAnotherBuildAndSaysSo() throws Exception {
    try (TestBoard board = open()) {
      bring(board);
      compared(board);
      Path file = cells().get(0);
      Path other = file.resolveSibling("cells-0123456789abcdef.csv");
      String before =
          Files.readString(file).replaceFirst("build,[0-9a-f]+,", "build,0123456789abcdef,");
      Files.writeString(other, before);
      Files.delete(file);
      JsonNode taken = bring(board);
      assertThat(taken.at("/comparison/state").asText()).isEqualTo("NONE");
      String note =
          "Plans in cells-0123456789abcdef.csv are not used again: another build of the program"
              + " has made them, and may have searched in another way.";
      assertThat(taken.path("note").asText()).isEqualTo(note);
      assertThat(estimated(board)).contains(note).doesNotContain("there already");
      JsonNode done = compared(board);
      assertThat(done.path("note").asText()).isEqualTo(note);
      assertThat(Files.readAllLines(file)).hasSize(PLANS + 2);
      assertThat(other).hasContent(before);
      assertThat(bring(board).path("note").asText()).isEmpty();
    }
  }

  /** What may be mended outside of the board is left where it is. */
  @Test
  void leavesAFileThatTheFileSystemDoesNotGiveWhereItIs() throws Exception {
    try (TestBoard board = open()) {
      bring(board);
      compared(board);
      Path file = cells().get(0);
      Files.delete(file);
      Files.createDirectory(file); // Nobody can read it, whatever their rights.
      assertThat(bring(board).path("note").asText())
          .startsWith("The plans from before cannot be read. ")
          .endsWith("Nothing can be compared in this way until it can be used.");
      assertThat(estimated(board)).contains("cannot be read");
      JsonNode failed = compared(board);
      assertThat(failed.at("/comparison/state").asText()).isEqualTo("FAILED");
      assertThat(failed.at("/comparison/sentence").asText()).startsWith("It could not go on. ");
      assertThat(cells()).containsExactly(file);
      Files.delete(file);
      assertThat(compared(board).at("/comparison/state").asText()).isEqualTo("DONE");
    }
  }

  /** Another process that writes to the cells until somebody lets it end. */
  static final class Other {
    private Other() {}

    /** Says a line when it has the file; ends with its input. */
    public static void main(String[] arguments) throws Exception {
      try (FileChannel channel = FileChannel.open(Path.of(arguments[0]), StandardOpenOption.WRITE);
          FileLock lock = channel.lock()) {
        System.out.println(lock.isValid());
        while (System.in.read() >= 0) {
          // until it ends
        }
      }
    }
  }

  @Test
  void tellsOfThePlansThereAreWhereItCannotGoOn() throws Exception {
    try (TestBoard board = open()) {
      bring(board);
      compared(board);
      Path file = cells().get(0);
      List<String> whole = Files.readAllLines(file);
      Files.write(file, whole.subList(0, whole.size() - 1));
      String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
      Process other =
          new ProcessBuilder(
                  java,
                  "-cp",
                  System.getProperty("java.class.path"),
                  Other.class.getName(),
                  file.toString())
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start();
      try (BufferedReader says = other.inputReader()) {
        assertThat(says.readLine()).isEqualTo("true");
        JsonNode failed = compared(board).path("comparison");
        assertThat(failed.path("state").asText()).isEqualTo("FAILED");
        assertThat(failed.path("sentence").asText())
            .startsWith("It could not go on; 11 of 12 plans are kept. ")
            .contains("another run is writing to it");
        assertThat(json(board.get("/api/whatif/report")).path("sections").size()).isPositive();
      } finally {
        other.destroy();
        other.waitFor();
      }
      assertThat(compared(board).at("/comparison/state").asText()).isEqualTo("DONE");
      assertThat(Files.readAllLines(file)).hasSameSizeAs(whole);
    }
  }

  @Test
  void refusesMorePlansThanAnybodyWaitsForAndTakesTheScenarios() throws Exception {
    try (TestBoard board = open()) {
      bring(board);
      // 12 plans under each of so many demands, and the usual one.
      HttpResponse<byte[]> most = wish(board, "estimate", demands(8332));
      assertThat(json(most).path("plans").asInt()).isEqualTo(99_996);
      for (String path : List.of("estimate", "compare")) {
        HttpResponse<byte[]> more = wish(board, path, demands(8333));
        assertThat(more.statusCode()).isEqualTo(422);
        assertThat(message(more)).contains("would take 100008 plans", "accepted: at most 100000");
      }
      assertThat(wish(board, "compare", demands(8332)).statusCode()).isEqualTo(202);
      board.post("/api/whatif/stop", "{}");
      TestBoard.await(() -> !look(board).at("/comparison/state").asText().equals("RUNNING"));
      String change = "{\"kind\":\"OTHER_DEMAND\",\"percent\":20}";
      long number = look(board).at("/scenarios/number").asLong();
      HttpResponse<byte[]> oneMore =
          board.post(
              "/api/whatif/scenarios/add", "{\"number\":" + number + ",\"change\":" + change + "}");
      assertThat(oneMore.statusCode()).as(message(oneMore)).isEqualTo(200);
      assertThat(json(oneMore).at("/scenarios/scenarios")).hasSize(6);
      assertThat(json(oneMore).at("/comparison/state").asText()).isEqualTo("NONE");
    }
  }

  private static String demands(int count) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(number -> "" + number / 100.0)
        .collect(Collectors.joining(","));
  }
}
