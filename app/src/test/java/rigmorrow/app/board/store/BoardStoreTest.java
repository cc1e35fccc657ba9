package rigmorrow.app.board.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.app.files.RefusedException;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.Promise;
import rigmorrow.solver.FloorSolver;

class BoardStoreTest {
  private static final Batch DAY =
      BoardStore.storable(Demo.batch(20, 1, LocalDate.of(2026, 3, 18)));
  private static final Orders ORDERS = Orders.of(DAY, FloorSolver.dispatch(DAY));
  private static final Instant NOON = Instant.parse("2026-03-17T12:00:00.123456Z");
  private static final PlanOrigin ORIGIN = new PlanOrigin("search", -7, 2, 1L << 40, "time");

  @TempDir Path folder;

  private static StoredState.Content content(Batch batch, Orders orders, String sentence) {
    return new StoredState.Content(batch, orders, ORIGIN, null, null, sentence, NOON);
  }

  private static StoredState.Content content(String sentence) {
    return content(DAY, ORDERS, sentence);
  }

  @Test
  void readsWhatItWroteAfterBeingClosed() {
    String first = ORDERS.byRig().get(0).get(0);
    String second = ORDERS.byRig().get(1).get(0);
    Batch changed =
        new Batch(
            DAY.floor(),
            DAY.shotList()
                .withPins(
                    List.of(
                        new Pin(
                            second,
                            DAY.floor().rigs().get(1).id(),
                            0,
                            DAY.shotList().date().atTime(10, 0, 7),
                            PinState.PLANNED)))
                .withHeldBack(List.of(first))
                .withJob(second, job -> job.withWeight(9)));
    StoredState.Content content =
        new StoredState.Content(
            changed,
            ORDERS.without(first),
            ORIGIN,
            new PlanBounds(1, 2, 3, 4),
            "{\"kind\":\"LEAVE_OUT\"}",
            "Leave out “" + first + "”",
            NOON);
    StoredState kept;
    try (BoardStore store = BoardStore.open(folder)) {
      assertThat(store.last()).isEmpty();
      store.keep(content("first"));
      kept = store.keep(content);
    }
    try (BoardStore store = BoardStore.open(folder)) {
      Step last = store.last().orElseThrow();
      assertThat(last)
          .isEqualTo(
              new Step(2, kept.id(), kept.id(), Step.Kind.KEPT, "Leave out “" + first + "”", NOON));
      assertThat(store.state(last.state()).equals(kept)).isTrue();
      assertThat(store.state(last.state()).content().equals(content)).isTrue();
      assertThat(store.since(1)).containsExactly(last);
      store.setBounds(kept.id(), new PlanBounds(5, 6, 7, 8));
      assertThat(store.state(kept.id()).content().bounds()).isEqualTo(new PlanBounds(5, 6, 7, 8));
    }
  }

  @Test
  void goesBackToTheStartAndForthAgain() {
    try (BoardStore store = BoardStore.open(folder)) {
      long first = store.keep(content("one")).id();
      long second = store.keep(content("two")).id();
      long third = store.keep(content("three")).id();

      assertThat(before(store)).isEqualTo(second);
      assertThat(after(store)).isZero();
      store.go(Step.Kind.UNDONE, second, "three", NOON);
      assertThat(before(store)).isEqualTo(first);
      assertThat(after(store)).isEqualTo(third);
      store.go(Step.Kind.UNDONE, first, "two", NOON);
      assertThat(before(store)).isZero();
      assertThat(after(store)).isEqualTo(second);
      store.go(Step.Kind.REDONE, second, "two", NOON);
      assertThat(after(store)).isEqualTo(third);
      assertThat(store.last().orElseThrow().revision()).isEqualTo(6);
    }
    try (BoardStore store = BoardStore.open(folder)) {
      assertThat(after(store)).isEqualTo(3);
      long other = store.keep(content("other")).id();
      assertThat(store.state(other).parent()).isEqualTo(2);
      assertThat(after(store)).isZero();
      assertThat(before(store)).isEqualTo(2);
      assertThat(store.since(3))
          .extracting(Step::sentence)
          .containsExactly("three", "two", "two", "other");
    }
  }

  private static long before(BoardStore store) {
    return store.before(store.last().orElseThrow()).map(StoredState::id).orElse(0L);
  }

  private static long after(BoardStore store) {
    return store.after(store.last().orElseThrow()).map(StoredState::id).orElse(0L);
  }

  @Test
  void keepsEachFloorAndShotListOnce() throws SQLException {
    try (BoardStore store = BoardStore.open(folder)) {
      for (int i = 0; i < 10; i++) {
        store.keep(content("move"));
      }
      String job = DAY.shotList().jobs().get(0).id();
      Batch weighed =
          new Batch(DAY.floor(), DAY.shotList().withJob(job, one -> one.withWeight(77)));
      store.keep(content(weighed, ORDERS, "weigh"));
      store.keep(content("and back"));
    }
    assertThat(count("SELECT count(*) FROM state")).isEqualTo(12);
    // A floor, two shot lists, one set of orders.
    assertThat(count("SELECT count(*) FROM content")).isEqualTo(4);
  }

  @Test
  void countsVersionsAndRemembersWhichIsPublished() {
    try (BoardStore store = BoardStore.open(folder)) {
      long state = store.keep(content("one")).id();
      assertThat(store.published()).isZero();
      assertThat(store.putBy(state, "for Ann", NOON))
          .isEqualTo(new StoredVersion(1, state, "for Ann", NOON));
      store.putBy(state, "", NOON);
      store.publish(2, NOON);
      store.publish(1, NOON);
    }
    try (BoardStore store = BoardStore.open(folder)) {
      assertThat(store.versions())
          .containsExactly(
              new StoredVersion(1, 1, "for Ann", NOON), new StoredVersion(2, 1, "", NOON));
      assertThat(store.published()).isEqualTo(1);
      assertThatThrownBy(() -> store.publish(3, NOON)).isInstanceOf(StoreException.class);
      assertThat(store.published()).isEqualTo(1);
    }
  }

  @Test
  void isForOneProcessAtATime() throws IOException {
    BoardStore store = BoardStore.open(folder);
    assertThatThrownBy(() -> BoardStore.open(folder))
        .isInstanceOf(RefusedException.class)
        .hasMessageContaining(folder.toString())
        .hasMessageContaining("open already");
    store.keep(content("still works"));
    store.close();
    BoardStore.open(folder).close();
  }

  @ParameterizedTest
  @ValueSource(strings = {"a b", "what?mode=ro", "100%25", "#1", "Fotogulvet på lørdag", "a&b=c;d"})
  void standsInAFolderOfAnyName(String name) {
    Path odd = folder.resolve(name);
    try (BoardStore store = BoardStore.open(odd)) {
      store.keep(content("one"));
    }
    assertThat(odd.resolve(BoardStore.NAME)).isRegularFile();
    try (BoardStore store = BoardStore.open(odd)) {
      assertThat(store.last()).isPresent();
    }
  }

  @Test
  void refusesABatchThatNoFileCanHold() {
    String odd = DAY.shotList().jobs().get(0).id();
    Batch far =
        new Batch(
            DAY.floor(),
            DAY.shotList()
                .withJob(
                    odd,
                    job ->
                        job.withPromise(
                            new Promise(
                                DAY.shotList().date().plusYears(9).atStartOfDay(), false))));
    assertThatThrownBy(() -> BoardStore.storable(far))
        .isInstanceOf(RefusedException.class)
        .hasMessageContaining("dueAt");
  }

  @Test
  void leavesAFileOfSomethingElseAlone() throws IOException {
    assertUntouched("Dear Ann,\nthe keys are under the mat.\n".getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void leavesAnotherDataBaseAlone() throws Exception {
    Files.createDirectories(folder);
    try (Connection other = connection();
        Statement statement = other.createStatement()) {
      statement.execute("CREATE TABLE recipes (name TEXT)");
      statement.execute("INSERT INTO recipes VALUES ('soup')");
    }
    assertUntouched(Files.readAllBytes(file()));
    assertThatThrownBy(() -> BoardStore.open(folder))
        .hasMessageContaining("a data base, but not of a board");
  }

  @Test
  void leavesABoardOfANewerProgramAlone() throws Exception {
    BoardStore.open(folder).close();
    try (Connection board = connection();
        Statement statement = board.createStatement()) {
      statement.execute("PRAGMA user_version = 2");
    }
    assertUntouched(Files.readAllBytes(file()));
    assertThatThrownBy(() -> BoardStore.open(folder))
        .hasMessageContaining("a newer version of this program, format 2; accepted: format 1");
  }

  /** Half of the file is gone. */
  @Test
  void leavesATruncatedFileAlone() throws IOException {
    byte[] whole = filled();
    assertUntouched(Arrays.copyOf(whole, whole.length / 2));
  }

  /** Wherever a page is overwritten, the file is refused as a whole or reads as it was. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void neverReadsDamageAsAPlan(long seed) throws IOException {
    byte[] bytes = filled();
    Random random = new Random(seed);
    byte[] noise = new byte[512];
    random.nextBytes(noise);
    int at = random.nextInt(bytes.length - noise.length);
    System.arraycopy(noise, 0, bytes, at, noise.length);
    Files.write(file(), bytes);
    try (BoardStore store = BoardStore.open(folder)) {
      for (Step step : store.since(0)) {
        StoredState state = store.state(step.state());
        assertThat(state.content().batch().floor().equals(DAY.floor())).isTrue();
        assertThat(state.content().orders()).isEqualTo(ORDERS);
      }
    } catch (RefusedException e) {
      assertThat(e).hasMessageContaining("damaged, nothing was changed in it");
    }
  }

  @Test
  void tellsAContentThatIsNotWhatItWas() throws Exception {
    filled();
    try (Connection board = connection();
        Statement statement = board.createStatement()) {
      statement.execute(
          "UPDATE content SET bytes = (SELECT bytes FROM content WHERE kind = 'floor')"
              + " WHERE kind = 'shot list'");
    }
    try (BoardStore store = BoardStore.open(folder)) {
      assertThatThrownBy(() -> store.state(1))
          .isInstanceOf(RefusedException.class)
          .hasMessageContaining("is not what it was");
    }
  }

  /** What a failed change wrote is not taken for written by the next. */
  @Test
  void keepsOnAfterAChangeThatFailed() throws Exception {
    try (BoardStore store = BoardStore.open(folder)) {
      try (Connection other = connection();
          Statement statement = other.createStatement()) {
        statement.execute(
            "CREATE TRIGGER full BEFORE INSERT ON step BEGIN SELECT RAISE(ABORT, 'full'); END");
      }
      assertThatThrownBy(() -> store.keep(content("one")))
          .isInstanceOf(StoreException.class)
          .hasMessageContaining("could not be written");
      assertThat(store.last()).isEmpty();
      try (Connection other = connection();
          Statement statement = other.createStatement()) {
        statement.execute("DROP TRIGGER full");
      }
      assertThat(store.keep(content("two")).id()).isEqualTo(1);
      assertThat(store.state(1).content().batch().floor().equals(DAY.floor())).isTrue();
    }
  }

  /** A process may have been killed before it had written anything. */
  @Test
  void beginsInAnEmptyFile() throws IOException {
    Files.createDirectories(folder);
    Files.write(file(), new byte[0]);
    try (BoardStore store = BoardStore.open(folder)) {
      assertThat(store.last()).isEmpty();
      store.keep(content("one"));
    }
  }

  private void assertUntouched(byte[] bytes) throws IOException {
    Files.write(file(), bytes);
    assertThatThrownBy(() -> BoardStore.open(folder))
        .isInstanceOf(RefusedException.class)
        .hasMessageContaining(file().toString())
        .hasMessageContaining("accepted: ")
        .satisfies(e -> assertThat(((RefusedException) e).problems()).hasSize(1));
    assertThat(Files.readAllBytes(file())).isEqualTo(bytes);
  }

  private byte[] filled() throws IOException {
    try (BoardStore store = BoardStore.open(folder)) {
      for (int i = 0; i < 40; i++) {
        store.keep(content("move " + i));
      }
    }
    return Files.readAllBytes(file());
  }

  private Path file() {
    return folder.resolve(BoardStore.NAME);
  }

  private Connection connection() throws SQLException {
    return DriverManager.getConnection("jdbc:sqlite:" + file());
  }

  private long count(String query) throws SQLException {
    try (Connection board = connection();
        Statement statement = board.createStatement();
        ResultSet row = statement.executeQuery(query)) {
      return row.getLong(1);
    }
  }
}
