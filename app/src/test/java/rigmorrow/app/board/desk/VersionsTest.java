package rigmorrow.app.board.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.board.store.Aside;
import rigmorrow.app.board.store.BoardStore;
import rigmorrow.app.board.store.PublishedFolder;
import rigmorrow.app.board.touch.Touch;
import rigmorrow.app.files.PlanOutput;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.data.Formats;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;

/** Plans put by, compared, published and brought back. */
class VersionsTest {
  private static final Batch DAY = Demo.batch(12, 1, LocalDate.of(2026, 3, 18));
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-17T15:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;

  private Desk open() {
    return Desk.open(folder, DAY, null, CLOCK);
  }

  private static String first(Desk desk) {
    return desk.now().plan().rigs().get(0).jobs().get(0).job();
  }

  @Test
  void putsPlansByAndFindsThemAfterARestart() {
    BoardState before;
    BoardState after;
    try (Desk desk = open()) {
      before = desk.now();
      assertThat(desk.putBy(1, "as dispatched"))
          .isEqualTo(new Version(1, "as dispatched", CLOCK.instant(), false));
      after = desk.keep(1, new Touch.LeaveOut(first(desk)));
      desk.putBy(2, "");
      assertThatThrownBy(() -> desk.putBy(1, "late")).isInstanceOf(StaleException.class);
      assertThat(desk.now().revision()).isEqualTo(2);
    }
    try (Desk desk = open()) {
      assertThat(desk.versions()).extracting(Version::note).containsExactly("as dispatched", "");
      assertThat(desk.state(1).plan().rigs()).isEqualTo(before.plan().rigs());
      assertThat(desk.state(2).plan().rigs()).isEqualTo(after.plan().rigs());
      assertThat(desk.state(0)).isSameAs(desk.now());
      assertThat(desk.state(1).revision()).isEqualTo(1);
      assertThat(desk.kept(2).cost().leftOutWeight())
          .isGreaterThan(desk.kept(1).cost().leftOutWeight());
      assertThat(desk.kept(0).cost()).isEqualTo(desk.kept(2).cost());
      assertThatThrownBy(() -> desk.state(3))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessage("There is no version 3.");
    }
  }

  @Test
  void bringsAVersionBackAndTakesThatBackToo() {
    try (Desk desk = open()) {
      BoardState start = desk.now();
      desk.putBy(1, "start");
      BoardState touched = desk.keep(1, new Touch.LeaveOut(first(desk)));
      BoardState restored = desk.restore(2, 1);
      assertThat(restored.plan().rigs()).isEqualTo(start.plan().rigs());
      assertThat(restored.batch().equals(start.batch())).isTrue();
      assertThat(restored.revision()).isEqualTo(3);
      assertThat(desk.undoSentence()).isEqualTo("Bring back version 1");
      assertThat(desk.undo(3).plan().rigs()).isEqualTo(touched.plan().rigs());
      assertThatThrownBy(() -> desk.restore(4, 7)).hasMessage("There is no version 7.");
      assertThatThrownBy(() -> desk.restore(1, 1)).isInstanceOf(StaleException.class);
    }
  }

  @Test
  void publishesTheFilesOfOneVersion() throws Exception {
    Plan put;
    try (Desk desk = open()) {
      put = desk.putBy(1, "for the crew") == null ? null : desk.now().plan();
      desk.keep(1, new Touch.LeaveOut(first(desk)));
      desk.publish(1);
      assertThat(desk.versions()).extracting(Version::published).containsExactly(true);
    }
    Path published = folder.resolve(PublishedFolder.NAME);
    for (String name : PlanOutput.names()) {
      assertThat(published.resolve(name)).isNotEmptyFile();
    }
    assertThat(Formats.readPlan(published.resolve("plan.json")).rigs()).isEqualTo(put.rigs());
    try (Desk desk = open()) {
      assertThat(desk.versions()).extracting(Version::published).containsExactly(true);
      desk.putBy(2, "second");
      desk.publish(2);
      assertThat(desk.versions()).extracting(Version::published).containsExactly(false, true);
      assertThat(Formats.readPlan(published.resolve("plan.json")).rigs())
          .isEqualTo(desk.now().plan().rigs());
      assertThatThrownBy(() -> desk.publish(3)).hasMessage("There is no version 3.");
    }
    assertThat(beside()).containsExactlyInAnyOrder("board.lock", "board.sqlite", "published");
  }

  @Test
  void saysOnItsPapersWhichPlanTheyAreOf() throws IOException {
    Path sheets = folder.resolve(PublishedFolder.NAME).resolve("run-sheets.html");
    try (Desk desk = open()) {
      desk.keep(1, new Touch.LeaveOut(first(desk)));
      String mark = PlanStamp.mark(desk.now().batch(), desk.now().plan());
      String open = "Not published: revision 2 of the board, made 2026-03-17 16:00, plan " + mark;
      assertThat(desk.handed(0).stamp().whole()).isEqualTo(open);
      assertThat(desk.glance().stamp().whole()).isEqualTo(open);
      desk.putBy(2, "before\nlunch");
      String by = ", put by 2026-03-17 16:00, plan " + mark + ": before lunch";
      String put = "Version 1 of the board, not published" + by;
      assertThat(desk.handed(0).stamp().whole()).as("it is that version").isEqualTo(put);
      assertThat(desk.handed(1).stamp().whole()).isEqualTo(put);
      desk.publish(1);
      assertThat(Files.readString(sheets)).contains("Version 1 of the board, published" + by);
      assertThat(desk.glance().stamp().whole()).contains("of the board, published");
      desk.undo(2);
      assertThat(desk.handed(0).stamp().whole())
          .isEqualTo(
              "Not published: revision 3 of the board, made 2026-03-17 16:00, plan "
                  + PlanStamp.mark(desk.now().batch(), desk.now().plan())
                  + "; published is version 1");
      desk.putBy(3, "after");
      desk.publish(2);
      assertThat(desk.handed(1).stamp().whole())
          .isEqualTo("Version 1 of the board, not published: version 2 is" + by);
    }
  }

  /** The sheets cannot be made, so that the files of the version before stay, all of them. */
  @Test
  void leavesTheFilesOfTheVersionBeforeWhenItFails() throws IOException {
    Path published = folder.resolve(PublishedFolder.NAME);
    Plan plan;
    try (Desk desk = open()) {
      plan = desk.now().plan();
    }
    PublishedFolder files = new PublishedFolder(folder, "this board");
    files.write(1, DAY, plan, new PlanStamp("", ""));
    Map<String, Long> before = content(published);
    Batch without =
        new Batch(DAY.floor(), DAY.shotList().withJobs(DAY.shotList().jobs().subList(0, 1)));
    assertThatThrownBy(() -> files.write(2, without, plan, new PlanStamp("", "")))
        .isInstanceOf(RuntimeException.class);
    assertThat(content(published)).isEqualTo(before);
    assertThat(files.recover()).isEqualTo(1);
    assertThat(beside()).doesNotContain("published.new", "published.old");
  }

  /** Killed between the two moves, or after both but before it was noted. */
  @Test
  void putsAnInterruptedChangeOfFilesInOrder() throws IOException {
    try (Desk desk = open()) {
      desk.putBy(1, "one");
      desk.putBy(1, "two");
      desk.publish(1);
    }
    Path published = folder.resolve(PublishedFolder.NAME);
    Map<String, Long> before = content(published);
    Files.move(published, folder.resolve("published.old"));
    Files.createDirectories(folder.resolve("published.new"));
    try (Desk desk = open()) {
      assertThat(content(published)).isEqualTo(before);
      assertThat(beside()).doesNotContain("published.new", "published.old");
      assertThat(desk.versions()).extracting(Version::published).containsExactly(true, false);
      new PublishedFolder(folder, board(published))
          .write(2, DAY, desk.now().plan(), new PlanStamp("", ""));
    }
    try (Desk desk = open()) {
      assertThat(desk.versions()).extracting(Version::published).containsExactly(false, true);
    }
  }

  /** Two boards may each have a version 1, and one may begin where the other was. */
  @Test
  void takesTheFilesOfAnotherBoardForNoneOfItsOwn() throws IOException {
    try (Desk desk = open()) {
      desk.putBy(1, "of the first board");
      desk.publish(1);
    }
    Path published = folder.resolve(PublishedFolder.NAME);
    Map<String, Long> before = content(published);
    Files.delete(folder.resolve(BoardStore.NAME));
    try (Desk desk = open()) {
      desk.putBy(1, "of the second board");
      assertThat(desk.versions()).extracting(Version::published).containsExactly(false);
    }
    try (Desk desk = open()) {
      assertThat(desk.versions()).extracting(Version::published).containsExactly(false);
    }
    assertThat(content(published)).isEqualTo(before);
    LocalDateTime now = LocalDateTime.of(2026, 3, 17, 15, 0);
    assertThat(Aside.put(folder, now)).isPresent();
    assertThat(content(folder.resolve("published-2026-03-17-150000"))).isEqualTo(before);
    assertThat(beside())
        .containsExactlyInAnyOrder(
            "board.lock", "board-2026-03-17-150000.sqlite", "published-2026-03-17-150000");
  }

  /** A board of an earlier program has no id; it gets one and is read as before. */
  @Test
  void givesABoardOfAnEarlierProgramAnId() throws Exception {
    try (Desk desk = open()) {
      desk.putBy(1, "");
    }
    try (Connection file =
            DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(BoardStore.NAME));
        Statement statement = file.createStatement()) {
      statement.execute("DROP TABLE meta");
    }
    try (Desk desk = open()) {
      desk.publish(1);
    }
    try (BoardStore store = BoardStore.open(folder)) {
      assertThat(store.id()).hasSize(36).isEqualTo(board(folder.resolve(PublishedFolder.NAME)));
    }
  }

  private static String board(Path published) throws IOException {
    Path version = published.resolve("version.json");
    return new ObjectMapper().readTree(Files.readAllBytes(version)).path("board").asText();
  }

  private java.util.List<String> beside() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }

  private static Map<String, Long> content(Path folder) throws IOException {
    Map<String, Long> content = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        content.put(
            file.getFileName().toString(),
            (long) java.util.Arrays.hashCode(Files.readAllBytes(file)));
      }
    }
    return content;
  }
}
