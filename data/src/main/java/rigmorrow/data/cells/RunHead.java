package rigmorrow.data.cells;

import java.util.List;

/**
 * What cells of one file have in common. Cells that were found otherwise are not to be compared
 * with them.
 *
 * @param program name and version
 * @param effort that each cell gets
 */
public record RunHead(String program, String effort) {
  private static final int DIGITS = 16;

  /** Short and the same for the same head only: a name for where its cells are kept. */
  public String id() {
    Digest digest = new Digest();
    row().forEach(digest::add);
    return digest.shown(DIGITS);
  }

  /** Names and values, as they stand in the file. */
  List<String> row() {
    return List.of("program", program, "effort", effort);
  }
}
