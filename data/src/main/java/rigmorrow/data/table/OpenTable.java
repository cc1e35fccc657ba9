package rigmorrow.data.table;

import java.util.List;
import rigmorrow.data.problem.InputProblem;

/**
 * A table that is open to be looked at and mended.
 *
 * @param name of its file, as the user gave it
 * @param table what stands in it
 * @param noted what was wrong with it already before its cells were read
 */
public record OpenTable(String name, Table table, List<InputProblem> noted) {
  public OpenTable {
    noted = List.copyOf(noted);
  }

  /**
   * The same table with other text in some cells. What was noted of those counts no more.
   *
   * @throws IllegalArgumentException when the table has no such cell
   */
  public OpenTable with(List<CellEdit> edits) {
    List<InputProblem> others =
        noted.stream()
            .filter(problem -> edits.stream().noneMatch(edit -> about(problem, edit)))
            .toList();
    return new OpenTable(name, table.with(edits), others);
  }

  private static boolean about(InputProblem problem, CellEdit edit) {
    return problem.place().row() == edit.row() && problem.place().column() == edit.column();
  }
}
