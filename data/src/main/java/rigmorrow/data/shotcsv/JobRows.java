package rigmorrow.data.shotcsv;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.shot.JobDraft;
import rigmorrow.data.shot.JobField;
import rigmorrow.data.shot.JobList;
import rigmorrow.data.shot.JobPlace;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.shot.ShotJob;

/** Turns rows into jobs. */
final class JobRows {
  private final CsvHeader header;
  private final Floor floor;
  private final Problems problems;
  private final CellReader cells;

  JobRows(CsvHeader header, Floor floor, Problems problems, CellReader cells) {
    this.header = header;
    this.floor = floor;
    this.problems = problems;
    this.cells = cells;
  }

  /** The jobs of all rows that have no problem, in file order. */
  List<ShotJob> jobs(List<CsvScanner.Row> rows, int columnCount) {
    askForUnits(rows);
    Map<String, Set<String>> recipesByArticle = recipesByArticle(rows);
    JobList list = new JobList(floor, problems);
    for (CsvScanner.Row row : rows) {
      String where = "row " + row.number();
      CsvScanner.Fault fault = fault(row, columnCount);
      if (fault != null) {
        problems.add(where, "", fault.value(), fault.accepted());
        continue;
      }
      JobDraft draft = draft(row, where);
      if (header.complete()) {
        nameJob(draft, recipesByArticle);
        list.add(draft, JobPlace.inRow(where, header::written));
      }
    }
    return list.jobs();
  }

  private static CsvScanner.@Nullable Fault fault(CsvScanner.Row row, int columnCount) {
    String beyond = row.firstBeyond(columnCount);
    return row.fault() != null || beyond.isEmpty()
        ? row.fault()
        : new CsvScanner.Fault(
            beyond,
            "at most %d cells, as in the header; a cell with the delimiter in it stands in quotes"
                .formatted(columnCount));
  }

  /** A column in which nothing has a unit is one problem, not one for each row. */
  private void askForUnits(List<CsvScanner.Row> rows) {
    for (CsvHeader.Known known : header.columns()) {
      if (!known.column().kind().unitNeeded()
          || known.unit() != null
          || header.unread().contains(known.column())) {
        continue;
      }
      List<String> filled =
          rows.stream().map(row -> row.cell(known.index())).filter(c -> !c.isEmpty()).toList();
      boolean numbers = filled.stream().anyMatch(cell -> Numeral.of(cell) != null);
      boolean units =
          filled.stream().anyMatch(cell -> !CellReader.Amount.of(cell).unit().isEmpty());
      if (numbers && !units) {
        header.askForUnit(known);
      }
    }
  }

  private JobDraft draft(CsvScanner.Row row, String where) {
    JobDraft draft = new JobDraft();
    for (CsvHeader.Known known : header.columns()) {
      String text = row.cell(known.index());
      CsvColumn column = known.column();
      if (text.isEmpty()) {
        continue;
      }
      boolean unread = header.unread().contains(column);
      Object value = unread ? null : cells.read(where, known, text);
      if (value == null) {
        draft.refuse(column.field());
      } else if (column == CsvColumn.RECIPE && value instanceof String name) {
        draft.set(JobField.RECIPE, recipe(name));
      } else {
        draft.set(column.field(), value);
      }
    }
    for (CsvHeader.SetupColumn setup : header.setups()) {
      String text = row.cell(setup.index());
      if (!text.isEmpty()) {
        AttributeValue value =
            CsvNames.find(
                setup.attribute().values(), text, AttributeValue::id, AttributeValue::label);
        draft.setSetup(setup.attribute().id(), value == null ? text : value.id());
      }
    }
    return draft;
  }

  private String recipe(String text) {
    Recipe recipe = CsvNames.find(floor.recipes(), text, Recipe::id, Recipe::label);
    return recipe == null ? text : recipe.id();
  }

  /** The recipes of each article among the rows without an id. */
  private Map<String, Set<String>> recipesByArticle(List<CsvScanner.Row> rows) {
    Map<String, Set<String>> recipesByArticle = new HashMap<>();
    for (CsvScanner.Row row : rows) {
      String article = header.text(row, CsvColumn.ARTICLE);
      String recipe = header.text(row, CsvColumn.RECIPE);
      if (header.text(row, CsvColumn.ID).isEmpty() && !article.isEmpty() && !recipe.isEmpty()) {
        recipesByArticle.computeIfAbsent(article, key -> new HashSet<>()).add(recipe(recipe));
      }
    }
    return recipesByArticle;
  }

  /** Gives an id to a job without one: its article, with the recipe where that has several. */
  private static void nameJob(JobDraft draft, Map<String, Set<String>> recipesByArticle) {
    if (draft.get(JobField.ID) != null
        || !(draft.get(JobField.ARTICLE) instanceof String article)) {
      return;
    }
    boolean several = recipesByArticle.getOrDefault(article, Set.of()).size() > 1;
    Object recipe = draft.get(JobField.RECIPE);
    draft.set(JobField.ID, several && recipe != null ? article + "/" + recipe : article);
    if (draft.get(JobField.SAMPLE) == null) {
      draft.set(JobField.SAMPLE, article);
    }
  }
}
