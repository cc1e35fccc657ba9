package rigmorrow.app.board.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.make.FitBook;
import rigmorrow.app.board.view.IntakeView;
import rigmorrow.app.board.view.IntakeView.IntakeProblemView;
import rigmorrow.app.board.view.IntakeView.TableRowView;
import rigmorrow.app.board.view.IntakeView.TableView;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.table.Table;
import rigmorrow.data.table.TableRow;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotList;

/** Files that were dropped, for the page. */
public final class IntakeViews {
  /** Rows that are shown though nothing is wrong with them fill up to this number. */
  private static final int ROWS_SHOWN = 200;

  private IntakeViews() {}

  /** The view of a file that was read for a floor. */
  public static IntakeView of(Intake intake, Floor floor) {
    Reading reading = intake.reading();
    ShotList list = reading.shotList();
    return new IntakeView(
        intake.id(),
        intake.file().name(),
        reading.date().toString(),
        reading.days(),
        reading.notes(),
        reading.problems().stream().map(IntakeViews::problem).toList(),
        table(reading),
        list == null ? 0 : list.jobs().size(),
        list == null ? null : new FitBook().view(new Batch(floor, list)));
  }

  private static IntakeProblemView problem(InputProblem problem) {
    return new IntakeProblemView(
        problem.place().row(),
        problem.place().column(),
        problem.where(),
        problem.field(),
        problem.value(),
        problem.accepted());
  }

  private static @Nullable TableView table(Reading reading) {
    Table table = reading.table();
    if (table == null) {
      return null;
    }
    Set<Integer> faulty =
        reading.problems().stream()
            .map(problem -> problem.place().row())
            .collect(Collectors.toCollection(TreeSet::new));
    List<TableRow> shown =
        new ArrayList<>(
            table.rows().stream().filter(row -> faulty.contains(row.number())).toList());
    table.rows().stream()
        .filter(row -> !faulty.contains(row.number()))
        .limit(Math.max(0, ROWS_SHOWN - shown.size()))
        .forEach(shown::add);
    int width = table.header().cells().size();
    return new TableView(
        table.header().number(),
        cells(table.header(), width),
        shown.stream().map(row -> new TableRowView(row.number(), cells(row, width))).toList(),
        table.rows().size());
  }

  private static List<String> cells(TableRow row, int width) {
    List<String> cells = new ArrayList<>();
    for (int column = 0; column < Math.max(width, row.cells().size()); column++) {
      cells.add(row.text(column));
    }
    return cells;
  }
}
