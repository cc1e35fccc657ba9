package rigmorrow.app.whatif.plans;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rigmorrow.data.cells.CellFile;
import rigmorrow.data.cells.KeptCell;
import rigmorrow.model.outcome.Cell;
import rigmorrow.solver.whatif.WhatIfListener;

/**
 * Keeps every finished cell before the next. Cells that rest on the same, such as those of a
 * scenario and its twin at another price, are planned once and finished together.
 */
public final class Keeping implements WhatIfListener {
  private final CellFile file;
  private final List<Cell> cells;
  private final Map<Cell.Key, String> byCell;
  private final ComparisonWatch watch;

  /** Cells that a plan yet to be made is for, in order; it is made for the first. */
  private final Map<String, List<Cell.Key>> missing = new HashMap<>();

  private final Set<Cell.Key> spared = new HashSet<>();

  /**
   * @param known cells that are there already
   * @param byCell names of all plans, by their cells in order
   */
  public Keeping(
      CellFile file, List<Cell> known, Map<Cell.Key, String> byCell, ComparisonWatch watch) {
    this.file = file;
    this.cells = new ArrayList<>(known);
    this.byCell = byCell;
    this.watch = watch;
    known.forEach(cell -> spared.add(cell.key()));
    byCell.forEach(this::await);
  }

  private void await(Cell.Key key, String plan) {
    if (!spared.contains(key)) {
      List<Cell.Key> twins = missing.computeIfAbsent(plan, name -> new ArrayList<>());
      twins.add(key);
      if (twins.size() > 1) {
        spared.add(key);
      }
    }
  }

  /** Cells that are there by now. */
  public List<Cell> cells() {
    return List.copyOf(cells);
  }

  /** Cells that need no plan of their own, as it was at the beginning. */
  public Set<Cell.Key> spared() {
    return Set.copyOf(spared);
  }

  @Override
  public void finished(Cell cell, Progress progress) {
    String plan = byCell.get(cell.key());
    List<Cell.Key> keys = plan == null ? null : missing.get(plan);
    if (plan == null || keys == null) {
      throw new IllegalStateException("nobody waits for " + cell.key());
    }
    file.append(new KeptCell(plan, cell));
    for (Cell.Key key : keys) {
      Cell same = cell.as(key);
      cells.add(same);
      watch.finished(same, new Progress(cells.size(), byCell.size(), progress.left()));
    }
  }

  @Override
  public boolean stopRequested() {
    return watch.stopRequested();
  }
}
