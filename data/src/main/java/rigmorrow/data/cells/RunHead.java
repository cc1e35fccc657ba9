package rigmorrow.data.cells;

import java.util.List;

/**
 * What cells of one file have in common. Cells that were found otherwise are not to be compared
 * with them.
 *
 * @param program name and version
 * @param build which of all programs of that name and version, the same for the same classes
 * @param effort that each cell gets
 */
public record RunHead(String program, String build, String effort) {
  private static final int DIGITS = 16;

  /** Short and the same for the same head only: a name for where its cells are kept. */
  public String id() {
    Digest digest = new Digest();
    row().forEach(digest::add);
    return digest.shown(DIGITS);
  }

  /** True where nothing but the program is another, so that these might be the same cells. */
  public boolean sameByAnotherProgram(RunHead other) {
    return effort.equals(other.effort)
        && !(program.equals(other.program) && build.equals(other.build));
  }

  /** Names and values, as they stand in the file. */
  List<String> row() {
    return List.of("program", program, "build", build, "effort", effort);
  }
}
