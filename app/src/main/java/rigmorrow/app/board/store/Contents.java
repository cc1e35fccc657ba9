package rigmorrow.app.board.store;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import rigmorrow.data.floor.FloorReader;
import rigmorrow.data.floor.FloorWriter;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.shotjson.ShotJsonReader;
import rigmorrow.data.shotjson.ShotJsonWriter;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotList;

/**
 * Floors, shot lists and orders in the file, each once, under the SHA-256 of its text, compressed:
 * so damage is always told from what was written. The texts are those of floor files and shot
 * lists.
 */
final class Contents {
  private static final String FLOOR = "floor";
  private static final String SHOT_LIST = "shot list";

  /** How many shot lists are remembered: every touch may make one. */
  private static final int MOST_LISTS = 64;

  private final Connection connection;
  private final BoardFile file;
  private final Map<String, Floor> floors = new HashMap<>();
  private final Map<Floor, String> hashByFloor = new IdentityHashMap<>();
  private final Map<String, ShotList> lists =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, ShotList> eldest) {
          return size() > MOST_LISTS;
        }
      };

  Contents(Connection connection, BoardFile file) {
    this.connection = connection;
    this.file = file;
  }

  /** The hash of a floor that is in the file from now on. */
  String put(Floor floor) throws SQLException {
    String known = hashByFloor.get(floor);
    if (known != null) {
      return known;
    }
    String hash = put(FLOOR, FloorWriter.write(floor, Trees.Notation.JSON));
    floors.put(hash, floor);
    hashByFloor.put(floor, hash);
    return hash;
  }

  /** The hash of a shot list that is in the file from now on. */
  String put(ShotList list) throws SQLException {
    return put(SHOT_LIST, ShotJsonWriter.write(list, Trees.Notation.JSON));
  }

  /**
   * A batch as it will be read from the file.
   *
   * @throws InputException when the file formats cannot hold it
   */
  static Batch readBack(Batch batch) throws InputException {
    String floor = FloorWriter.write(batch.floor(), Trees.Notation.JSON);
    Floor read = FloorReader.read("floor", floor, Trees.Notation.JSON);
    String list = ShotJsonWriter.write(batch.shotList(), Trees.Notation.JSON);
    return new Batch(read, ShotJsonReader.read("shot list", list, Trees.Notation.JSON, read));
  }

  /** A floor of the file; the same one every time. */
  Floor floor(String hash) throws SQLException {
    Floor known = floors.get(hash);
    if (known != null) {
      return known;
    }
    try {
      Floor read = FloorReader.read("floor of the board", text(hash), Trees.Notation.JSON);
      floors.put(hash, read);
      hashByFloor.put(read, hash);
      return read;
    } catch (InputException e) {
      throw file.damaged("" + e.getMessage());
    }
  }

  /** A shot list of the file, which is one of a floor's. */
  ShotList list(String hash, String floorHash) throws SQLException {
    Floor floor = floor(floorHash);
    ShotList known = lists.get(hash + floorHash);
    if (known != null) {
      return known;
    }
    try {
      ShotList read =
          ShotJsonReader.read("shot list of the board", text(hash), Trees.Notation.JSON, floor);
      lists.put(hash + floorHash, read);
      return read;
    } catch (InputException e) {
      throw file.damaged("" + e.getMessage());
    }
  }

  /** Forgets which floors are in the file: what was put there was taken back. */
  void forget() {
    hashByFloor.clear();
  }

  /** The hash of a text that is in the file from now on. */
  String put(String kind, String text) throws SQLException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    String hash = hash(bytes);
    try (PreparedStatement insert =
        connection.prepareStatement(
            "INSERT INTO content (hash, kind, bytes) VALUES (?, ?, ?) ON CONFLICT DO NOTHING")) {
      insert.setString(1, hash);
      insert.setString(2, kind);
      insert.setBytes(3, packed(bytes));
      insert.executeUpdate();
    }
    return hash;
  }

  /** A text of the file, as it was put there. */
  String text(String hash) throws SQLException {
    try (PreparedStatement query =
        connection.prepareStatement("SELECT bytes FROM content WHERE hash = ?")) {
      query.setString(1, hash);
      try (ResultSet rows = query.executeQuery()) {
        if (!rows.next()) {
          throw file.damaged("content " + hash + " is missing");
        }
        byte[] bytes = unpacked(rows.getBytes(1));
        if (!hash(bytes).equals(hash)) {
          throw file.damaged("content " + hash + " is not what it was");
        }
        return new String(bytes, StandardCharsets.UTF_8);
      }
    }
  }

  private byte[] unpacked(byte[] packed) {
    try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(packed))) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw file.damaged("" + e.getMessage());
    }
  }

  private static byte[] packed(byte[] bytes) {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
      out.write(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException("memory cannot be written", e);
    }
    return packed.toByteArray();
  }

  private static String hash(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every JDK has SHA-256", e);
    }
  }
}
