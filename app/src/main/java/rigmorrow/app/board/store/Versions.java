package rigmorrow.app.board.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** The states that were put by, and which of them was given to the crew. */
final class Versions {
  private final Connection connection;

  Versions(Connection connection) {
    this.connection = connection;
  }

  /** Puts a state by. */
  StoredVersion add(long state, String note, Instant at) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "INSERT INTO version (number, state, note, at)"
                + " VALUES ((SELECT 1 + count(*) FROM version), ?, ?, ?) RETURNING number")) {
      insert.setLong(1, state);
      insert.setString(2, note);
      insert.setString(3, at.toString());
      try (ResultSet row = insert.executeQuery()) {
        row.next();
        return new StoredVersion(row.getInt(1), state, note, at);
      }
    }
  }

  /** Every version, the oldest first. */
  List<StoredVersion> all() throws SQLException {
    List<StoredVersion> all = new ArrayList<>();
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery("SELECT * FROM version ORDER BY number")) {
      while (rows.next()) {
        all.add(
            new StoredVersion(
                rows.getInt("number"),
                rows.getLong("state"),
                rows.getString("note"),
                Instant.parse(rows.getString("at"))));
      }
    }
    return all;
  }

  /** Notes which version the crew works from. */
  void publish(int number, Instant at) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement("INSERT INTO publication (version, at) VALUES (?, ?)")) {
      insert.setInt(1, number);
      insert.setString(2, at.toString());
      insert.executeUpdate();
    }
  }

  /** The version that the crew works from; 0 for none. */
  int published() throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row =
            statement.executeQuery("SELECT version FROM publication ORDER BY id DESC LIMIT 1")) {
      return row.next() ? row.getInt(1) : 0;
    }
  }
}
