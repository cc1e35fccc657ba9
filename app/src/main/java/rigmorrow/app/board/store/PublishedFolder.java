package rigmorrow.app.board.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import rigmorrow.app.files.OutputFiles;
import rigmorrow.app.files.PlanOutput;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;

/**
 * The folder that the crew works from. It holds the files of one version, whole, or those of the
 * one before, whole: the files are written beside it and the folder is changed for another.
 */
public final class PublishedFolder {
  /** Its name in the board's folder. */
  public static final String NAME = "published";

  private static final ObjectMapper JSON = new ObjectMapper();

  /** Says which version of which board the files are of. */
  private static final String VERSION = "version.json";

  private final String board;
  private final Mover mover;
  private final Path path;
  private final Path draft;
  private final Path before;

  /** Gives a folder another name. */
  @FunctionalInterface
  interface Mover {
    void move(Path from, Path to) throws IOException;
  }

  /**
   * @param folder of the board
   * @param board its id; a folder may hold what another board published
   */
  public PublishedFolder(Path folder, String board) {
    this(folder, board, Files::move);
  }

  PublishedFolder(Path folder, String board, Mover mover) {
    this.board = board;
    this.mover = mover;
    this.path = folder.resolve(NAME);
    this.draft = folder.resolve(NAME + ".new");
    this.before = folder.resolve(NAME + ".old");
  }

  /**
   * Puts what an interrupted change left behind in order.
   *
   * @return number of the board's version whose files are in the folder; 0 for none, or files of
   *     another board
   */
  public int recover() throws IOException {
    if (!Files.exists(path) && Files.exists(before)) {
      Files.move(before, path);
    }
    delete(before);
    delete(draft);
    Path version = path.resolve(VERSION);
    if (!Files.isRegularFile(version)) {
      return 0;
    }
    try {
      JsonNode said = JSON.readTree(Files.readAllBytes(version));
      return said.path("board").asText().equals(board) ? said.path("version").asInt(0) : 0;
    } catch (JsonProcessingException e) {
      return 0; // Somebody else wrote there; what the store says of it counts.
    }
  }

  /**
   * Changes the files for those of another version. Where it fails the files of the one before are
   * where they were.
   *
   * @param number of the version
   * @param stamp what the files say of it
   */
  public void write(int number, Batch batch, Plan plan, PlanStamp stamp) throws IOException {
    delete(draft);
    Files.createDirectories(draft);
    PlanOutput.write(draft, batch, plan, stamp);
    String said = JSON.createObjectNode().put("board", board).put("version", number).toString();
    OutputFiles.write(draft.resolve(VERSION), said + "\n");
    delete(before);
    boolean first = !Files.exists(path);
    if (!first) {
      mover.move(path, before);
    }
    try {
      mover.move(draft, path);
    } catch (IOException | RuntimeException e) {
      if (!first) {
        mover.move(before, path);
      }
      throw e;
    }
    delete(before);
  }

  private static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    List<Path> all;
    try (Stream<Path> walk = Files.walk(folder)) {
      all = walk.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path one : all) {
      Files.delete(one);
    }
  }
}
