package rigmorrow.data.cells;

import java.util.List;

/**
 * What a file of cells holds.
 *
 * @param cells that can be read, each plan once
 * @param damaged lines that are no cells, though they have their ends; what stood there is lost
 */
public record KeptCells(List<KeptCell> cells, int damaged) {
  public KeptCells {
    cells = List.copyOf(cells);
  }
}
