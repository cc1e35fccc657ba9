package rigmorrow.app.board.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.UUID;
import org.sqlite.SQLiteConfig;
import rigmorrow.app.files.RefusedException;
import rigmorrow.data.problem.InputProblem;

/**
 * Opens the file of a board. It is read before anything is written to it: a file that is damaged,
 * or not of this program, or of a newer one, stays as it is, byte for byte.
 */
final class BoardFile {
  /** Tells the file from other data bases: "RgMB". */
  private static final int APPLICATION = 0x52674D42;

  /** Of the tables below. Who changes them adds one, and the step from the older ones. */
  static final int FORMAT = 1;

  private static final int BUSY_MILLIS = 5000;

  private static final List<String> TABLES =
      List.of(
          """
          CREATE TABLE content (
            hash TEXT PRIMARY KEY,
            kind TEXT NOT NULL,
            bytes BLOB NOT NULL
          ) STRICT""",
          """
          CREATE TABLE state (
            id INTEGER PRIMARY KEY,
            parent INTEGER REFERENCES state (id),
            revision INTEGER NOT NULL,
            floor TEXT NOT NULL REFERENCES content (hash),
            shot_list TEXT NOT NULL REFERENCES content (hash),
            orders TEXT NOT NULL REFERENCES content (hash),
            method TEXT NOT NULL,
            seed INTEGER NOT NULL,
            solvers INTEGER NOT NULL,
            step_limit INTEGER NOT NULL,
            stopped TEXT NOT NULL,
            left_out_bound INTEGER,
            lateness_bound INTEGER,
            changeover_bound INTEGER,
            finishing_bound INTEGER,
            touch TEXT,
            sentence TEXT NOT NULL,
            at TEXT NOT NULL
          ) STRICT""",
          """
          CREATE TABLE step (
            revision INTEGER PRIMARY KEY,
            state INTEGER NOT NULL REFERENCES state (id),
            tip INTEGER NOT NULL REFERENCES state (id),
            kind TEXT NOT NULL,
            sentence TEXT NOT NULL,
            at TEXT NOT NULL
          ) STRICT""",
          """
          CREATE TABLE version (
            number INTEGER PRIMARY KEY,
            state INTEGER NOT NULL REFERENCES state (id),
            note TEXT NOT NULL,
            at TEXT NOT NULL
          ) STRICT""",
          """
          CREATE TABLE publication (
            id INTEGER PRIMARY KEY,
            version INTEGER NOT NULL REFERENCES version (number),
            at TEXT NOT NULL
          ) STRICT""",
          "PRAGMA application_id = " + APPLICATION,
          "PRAGMA user_version = " + FORMAT);

  /** Came later than the others, and is no reason for an older program to refuse the file. */
  private static final String META =
      "CREATE TABLE IF NOT EXISTS meta (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT";

  private final Path path;

  BoardFile(Path path) {
    this.path = path;
  }

  /**
   * A connection that has every change on the disk before it says so.
   *
   * @throws RefusedException when the file is none of this program's, or damaged, or of a newer one
   */
  Connection open() {
    boolean begun = begun();
    if (begun) {
      inspect();
    }
    SQLiteConfig config = new SQLiteConfig();
    config.setJournalMode(SQLiteConfig.JournalMode.WAL);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    config.enforceForeignKeys(true);
    config.setBusyTimeout(BUSY_MILLIS);
    try {
      Connection connection = config.createConnection(url());
      connection.setAutoCommit(false);
      if (number(connection, "PRAGMA user_version") == 0) {
        create(connection);
      }
      name(connection);
      return connection;
    } catch (SQLException e) {
      throw new StoreException(path + " cannot be opened: " + e.getMessage(), e);
    }
  }

  /** The file may have been made by a process that ended before it had any table. */
  private boolean begun() {
    try {
      return Files.exists(path) && Files.size(path) > 0;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void inspect() {
    SQLiteConfig config = new SQLiteConfig();
    config.setReadOnly(true);
    config.setBusyTimeout(BUSY_MILLIS);
    try (Connection connection = config.createConnection(url())) {
      long application = number(connection, "PRAGMA application_id");
      long format = number(connection, "PRAGMA user_version");
      if (application == 0 && format == 0 && number(connection, "PRAGMA page_count") <= 1) {
        return;
      }
      if (application != APPLICATION) {
        throw refused("a data base, but not of a board", "a board of this program");
      }
      if (format > FORMAT) {
        throw refused(
            "a board of a newer version of this program, format " + format,
            "format " + FORMAT + " or older, or the newer version of the program");
      }
      String found = text(connection, "PRAGMA quick_check(1)");
      if (!found.equals("ok")) {
        throw damaged(found);
      }
    } catch (SQLException e) {
      throw damaged("" + e.getMessage());
    }
  }

  private static void create(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      for (String table : TABLES) {
        statement.execute(table);
      }
    }
    connection.commit();
  }

  /** Gives a board that has no id one. */
  private static void name(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(META);
    }
    try (PreparedStatement insert =
        connection.prepareStatement("INSERT OR IGNORE INTO meta VALUES ('board', ?)")) {
      insert.setString(1, UUID.randomUUID().toString());
      insert.executeUpdate();
    }
    connection.commit();
  }

  /** Tells a board from every other, also from one that began in the same folder. */
  static String id(Connection connection) throws SQLException {
    return text(connection, "SELECT value FROM meta WHERE name = 'board'");
  }

  /** The file is not what this program writes. */
  RefusedException damaged(String how) {
    return refused(
        "damaged, nothing was changed in it (" + how.lines().findFirst().orElse("") + ")",
        "a copy of the file from before, or another folder");
  }

  private RefusedException refused(String value, String accepted) {
    return new RefusedException(
        path + ": " + value + "; accepted: " + accepted,
        List.of(new InputProblem(path.toString(), "file", "", value, accepted)));
  }

  /** As a URI, so that no sign in a folder's name is taken for an option. */
  private String url() {
    return "jdbc:sqlite:" + path.toAbsolutePath().toUri();
  }

  private static long number(Connection connection, String query) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(query)) {
      return rows.next() ? rows.getLong(1) : 0;
    }
  }

  private static String text(Connection connection, String query) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(query)) {
      return rows.next() ? rows.getString(1) : "";
    }
  }
}
