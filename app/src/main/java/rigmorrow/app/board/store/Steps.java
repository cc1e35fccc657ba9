package rigmorrow.app.board.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The way the plan went, state by state, forth and back. */
final class Steps {
  private final Connection connection;

  Steps(Connection connection) {
    this.connection = connection;
  }

  /** Adds a step. */
  void add(Step step) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "INSERT INTO step (revision, state, tip, kind, sentence, at)"
                + " VALUES (?, ?, ?, ?, ?, ?)")) {
      insert.setLong(1, step.revision());
      insert.setLong(2, step.state());
      insert.setLong(3, step.tip());
      insert.setString(4, step.kind().name());
      insert.setString(5, step.sentence());
      insert.setString(6, step.at().toString());
      insert.executeUpdate();
    }
  }

  /** The last step, if there is one. */
  Optional<Step> last() throws SQLException {
    return steps("SELECT * FROM step ORDER BY revision DESC LIMIT 1 OFFSET ?", 0).stream()
        .findFirst();
  }

  /** Every step after a revision, the oldest first. */
  List<Step> since(long revision) throws SQLException {
    return steps("SELECT * FROM step WHERE revision > ? ORDER BY revision", revision);
  }

  private List<Step> steps(String text, long number) throws SQLException {
    List<Step> steps = new ArrayList<>();
    try (PreparedStatement query = connection.prepareStatement(text)) {
      query.setLong(1, number);
      try (ResultSet rows = query.executeQuery()) {
        while (rows.next()) {
          steps.add(
              new Step(
                  rows.getLong("revision"),
                  rows.getLong("state"),
                  rows.getLong("tip"),
                  Step.Kind.valueOf(rows.getString("kind")),
                  rows.getString("sentence"),
                  Instant.parse(rows.getString("at"))));
        }
      }
    }
    return steps;
  }
}
