package rigmorrow.app.board.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotList;

/** The states in the file. */
final class States {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String ORDERS = "orders";
  private static final TypeReference<LinkedHashMap<String, List<String>>> BY_RIG =
      new TypeReference<>() {};

  private final Connection connection;
  private final BoardFile file;
  private final Contents contents;

  States(Connection connection, BoardFile file) {
    this.connection = connection;
    this.file = file;
    this.contents = new Contents(connection, file);
  }

  /** Adds a state. */
  StoredState add(@Nullable Long parent, long revision, StoredState.Content content)
      throws SQLException {
    PlanOrigin origin = content.origin();
    try (PreparedStatement insert =
        connection.prepareStatement(
            "INSERT INTO state (parent, revision, floor, shot_list, orders, method, seed, solvers,"
                + " step_limit, stopped, touch, sentence, at)"
                + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING id")) {
      insert.setObject(1, parent);
      insert.setLong(2, revision);
      insert.setString(3, contents.put(content.batch().floor()));
      insert.setString(4, contents.put(content.batch().shotList()));
      insert.setString(5, contents.put(ORDERS, text(content.batch().floor(), content.orders())));
      insert.setString(6, origin.method());
      insert.setLong(7, origin.seed());
      insert.setInt(8, origin.solvers());
      insert.setLong(9, origin.stepLimit());
      insert.setString(10, origin.stopped());
      insert.setString(11, content.touch());
      insert.setString(12, content.sentence());
      insert.setString(13, content.at().toString());
      long id;
      try (ResultSet rows = insert.executeQuery()) {
        rows.next();
        id = rows.getLong(1);
      }
      setBounds(id, content.bounds());
      return new StoredState(id, parent, revision, content);
    }
  }

  /** Forgets what it knew of the file: the last changes were taken back. */
  void forget() {
    contents.forget();
  }

  /** Notes what no plan of a state's batch can be below. */
  void setBounds(long id, @Nullable PlanBounds bounds) throws SQLException {
    try (PreparedStatement update =
        connection.prepareStatement(
            "UPDATE state SET left_out_bound = ?, lateness_bound = ?, changeover_bound = ?,"
                + " finishing_bound = ? WHERE id = ?")) {
      if (bounds == null) {
        for (int at = 1; at <= 4; at++) {
          update.setNull(at, Types.INTEGER);
        }
      } else {
        update.setLong(1, bounds.leftOutPoints());
        update.setLong(2, bounds.latenessPoints());
        update.setLong(3, bounds.changeoverPoints());
        update.setLong(4, bounds.finishingPoints());
      }
      update.setLong(5, id);
      update.executeUpdate();
    }
  }

  /** Reads a state. */
  StoredState get(long id) throws SQLException {
    try (PreparedStatement query =
        connection.prepareStatement("SELECT * FROM state WHERE id = ?")) {
      query.setLong(1, id);
      try (ResultSet row = query.executeQuery()) {
        if (!row.next()) {
          throw file.damaged("state " + id + " is missing");
        }
        return state(row);
      }
    }
  }

  /** Id of the state that another was made from, if there is one. */
  Optional<Long> parent(long id) throws SQLException {
    try (PreparedStatement query =
        connection.prepareStatement("SELECT parent FROM state WHERE id = ?")) {
      query.setLong(1, id);
      try (ResultSet row = query.executeQuery()) {
        return row.next() ? Optional.ofNullable(id(row, "parent")) : Optional.empty();
      }
    }
  }

  /** Id of the state after one on the way to another, if they are not the same. */
  Optional<Long> next(long id, long tip) throws SQLException {
    try (PreparedStatement query =
        connection.prepareStatement(
            "WITH RECURSIVE way (id, parent) AS ("
                + " SELECT id, parent FROM state WHERE id = ?"
                + " UNION ALL SELECT state.id, state.parent FROM state"
                + " JOIN way ON state.id = way.parent WHERE way.id > ?)"
                + " SELECT id FROM way WHERE parent = ?")) {
      query.setLong(1, tip);
      query.setLong(2, id);
      query.setLong(3, id);
      try (ResultSet row = query.executeQuery()) {
        return row.next() ? Optional.of(row.getLong(1)) : Optional.empty();
      }
    }
  }

  private StoredState state(ResultSet row) throws SQLException {
    try {
      Floor floor = contents.floor(row.getString("floor"));
      ShotList list = contents.list(row.getString("shot_list"), row.getString("floor"));
      PlanOrigin origin =
          new PlanOrigin(
              row.getString("method"),
              row.getLong("seed"),
              row.getInt("solvers"),
              row.getLong("step_limit"),
              row.getString("stopped"));
      StoredState.Content content =
          new StoredState.Content(
              new Batch(floor, list),
              orders(floor, contents.text(row.getString("orders"))),
              origin,
              bounds(row),
              row.getString("touch"),
              row.getString("sentence"),
              Instant.parse(row.getString("at")));
      return new StoredState(
          row.getLong("id"), id(row, "parent"), row.getLong("revision"), content);
    } catch (IllegalArgumentException | DateTimeException | JsonProcessingException e) {
      throw file.damaged("state " + row.getLong("id") + ": " + e.getMessage());
    }
  }

  private static @Nullable Long id(ResultSet row, String column) throws SQLException {
    long id = row.getLong(column);
    return row.wasNull() ? null : Long.valueOf(id);
  }

  private static @Nullable PlanBounds bounds(ResultSet row) throws SQLException {
    long leftOut = row.getLong("left_out_bound");
    return row.wasNull()
        ? null
        : new PlanBounds(
            leftOut,
            row.getLong("lateness_bound"),
            row.getLong("changeover_bound"),
            row.getLong("finishing_bound"));
  }

  private static String text(Floor floor, Orders orders) {
    Map<String, List<String>> byRig = new LinkedHashMap<>();
    for (int rig = 0; rig < floor.rigs().size(); rig++) {
      byRig.put(floor.rigs().get(rig).id(), orders.byRig().get(rig));
    }
    try {
      return JSON.writeValueAsString(byRig);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("lists of texts cannot be written", e);
    }
  }

  private static Orders orders(Floor floor, String text) throws JsonProcessingException {
    Map<String, List<String>> byRig = JSON.readValue(text, BY_RIG);
    return new Orders(
        floor.rigs().stream().map(rig -> byRig.getOrDefault(rig.id(), List.of())).toList());
  }
}
