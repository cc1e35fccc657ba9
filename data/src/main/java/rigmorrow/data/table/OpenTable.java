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
   * The same table with other text in a cell. What was noted of the cell counts no more.
   *
   * @throws IllegalArgumentException when the table has no such cell
   */
  public OpenTable with(CellEdit edit) {
    List<InputProblem> others =
        noted.stream()
            .filter(
                problem ->
                    problem.place().row() != edit.row()
                        || problem.place().column() != edit.column())
            .toList();
    return new OpenTable(name, table.with(edit), others);
  }
}
