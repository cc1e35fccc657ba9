package rigmorrow.data.cells;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import rigmorrow.data.floor.FloorWriter;
import rigmorrow.data.json.Trees;
import rigmorrow.data.scenario.ScenarioWriter;
import rigmorrow.data.shotjson.ShotJsonWriter;
import rigmorrow.model.scenario.Study;
import rigmorrow.model.shot.Batch;

/**
 * What cells of one run have in common. Cells that were found otherwise are not to be compared with
 * them.
 *
 * @param program name and version
 * @param scenarios digest of what the scenario file says
 * @param batches digest of the batches
 * @param effort that each cell gets
 */
public record RunHead(String program, String scenarios, String batches, String effort) {
  private static final int DIGITS = 16;

  /**
   * The head of a run.
   *
   * @param names of the batches, in their order
   */
  public static RunHead of(
      String program, Study study, List<String> names, List<Batch> batches, String effort) {
    MessageDigest days = sha256();
    for (int i = 0; i < batches.size(); i++) {
      days.update(bytes(names.get(i)));
      days.update(bytes(FloorWriter.write(batches.get(i).floor(), Trees.Notation.JSON)));
      days.update(bytes(ShotJsonWriter.write(batches.get(i).shotList(), Trees.Notation.JSON)));
    }
    MessageDigest scenarios = sha256();
    scenarios.update(bytes(ScenarioWriter.write(study, 0, Trees.Notation.JSON)));
    return new RunHead(program, shown(scenarios), shown(days), effort);
  }

  /** Short and the same for the same head only: a name for where its cells are kept. */
  public String id() {
    MessageDigest all = sha256();
    all.update(bytes(String.join("\n", row())));
    return shown(all);
  }

  /** Names and values, as they stand in the file. */
  List<String> row() {
    return List.of(
        "program", program, "scenarios", scenarios, "batches", batches, "effort", effort);
  }

  private static String shown(MessageDigest digest) {
    return HexFormat.of().formatHex(digest.digest()).substring(0, DIGITS);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every JDK has SHA-256", e);
    }
  }
}
