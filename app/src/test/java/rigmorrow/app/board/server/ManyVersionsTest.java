package rigmorrow.app.board.server;

import static org.assertj.core.api.Assertions.assertThat;
import static rigmorrow.app.board.server.TestBoard.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.board.store.BoardStore;
import rigmorrow.data.demo.Demo;

/** Versions stay what they are, so that a list of many does not decode them again and again. */
@Timeout(120)
class ManyVersionsTest {
  /** More than the desk remembers decoded. */
  private static final int VERSIONS = 36;

  @TempDir Path folder;

  @Test
  void readsEachVersionOnce() throws Exception {
    try (TestBoard board = TestBoard.open(folder, Demo.batch(5, 1, TestBoard.DAY), null)) {
      while (board.desk.now().plan().bounds() == null) {
        Thread.sleep(20);
      }
      board.desk.putBy(1, "first");
      for (int number = 2; number <= VERSIONS; number++) {
        long revision = board.desk.restore(board.revision(), 1).revision();
        board.desk.putBy(revision, "");
      }
      JsonNode first = json(board.get("/api/versions"));
      assertThat(first.path("versions")).hasSize(VERSIONS);
      Path file = folder.resolve(BoardStore.NAME);
      try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file);
          Statement statement = other.createStatement()) {
        statement.execute("UPDATE state SET at = 'whoever reads this must fail'");
      }
      HttpResponse<byte[]> again = board.get("/api/versions");
      assertThat(again.statusCode()).isEqualTo(200);
      assertThat(json(again)).isEqualTo(first);
    }
  }
}
