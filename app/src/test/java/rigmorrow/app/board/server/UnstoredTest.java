package rigmorrow.app.board.server;

import static org.assertj.core.api.Assertions.assertThat;
import static rigmorrow.app.board.server.TestBoard.json;
import static rigmorrow.app.board.server.TestBoard.message;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.board.store.BoardStore;

/** What cannot be stored is told with its reason, and the plan is as it was. */
class UnstoredTest {
  @TempDir Path folder;

  @Test
  void saysThatATouchCouldNotBeWrittenAndWhy() throws Exception {
    try (TestBoard board = TestBoard.open(folder)) {
      Path file = folder.resolve(BoardStore.NAME);
      try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file);
          Statement statement = other.createStatement()) {
        statement.execute(
            "CREATE TRIGGER full BEFORE INSERT ON step BEGIN SELECT RAISE(ABORT, 'disk full'); END");
      }
      HttpResponse<byte[]> answer = board.post("/api/keep", board.move(1));
      assertThat(answer.statusCode()).isEqualTo(507);
      assertThat(message(answer)).contains(file.toString(), "could not be written", "disk full");
      assertThat(board.revision()).isEqualTo(1);
      assertThat(described(board, "/api/keep")).isTrue();
    }
  }

  @Test
  void saysThatTheCrewsFilesCouldNotBeWrittenAndWhy() throws Exception {
    Path home = folder.resolve("home");
    Path moved = folder.resolve("moved");
    try (TestBoard board = TestBoard.open(home)) {
      board.post("/api/versions", "{\"revision\":1,\"note\":\"\"}");
      Files.move(home, moved);
      Files.writeString(home, "somebody put a file where the folder was");
      HttpResponse<byte[]> answer = board.post("/api/versions/1/publish", "{}");
      assertThat(answer.statusCode()).isEqualTo(507);
      assertThat(message(answer)).startsWith(home.toString()).doesNotContain("fault", "Exception");
      assertThat(described(board, "/api/versions/{n}/publish")).isTrue();
      Files.delete(home);
      Files.move(moved, home);
    }
  }

  private static boolean described(TestBoard board, String path) {
    return json(board.get("/api/openapi.json"))
        .path("paths")
        .path(path)
        .path("post")
        .path("responses")
        .has("507");
  }
}
