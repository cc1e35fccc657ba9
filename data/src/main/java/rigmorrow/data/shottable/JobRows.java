package rigmorrow.data.shottable;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.column.CellReader;
import rigmorrow.data.column.Column;
import rigmorrow.data.column.Header;
import rigmorrow.data.column.Names;
import rigmorrow.data.problem.Place;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.shot.FewerPeople;
import rigmorrow.data.shot.JobDraft;
import rigmorrow.data.shot.JobField;
import rigmorrow.data.shot.JobList;
import rigmorrow.data.shot.JobPlace;
import rigmorrow.data.table.Table;
import rigmorrow.data.table.TableCell;
import rigmorrow.data.table.TableFault;
import rigmorrow.data.table.TableRow;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.shot.ShotJob;

/** Turns rows into jobs. */
final class JobRows {
  private final Header header;
  private final Floor floor;
  private final Problems problems;
  private final CellReader cells;
  private final FewerPeople fewer = new FewerPeople();

  JobRows(Header header, Floor floor, Problems problems, CellReader cells) {
    this.header = header;
    this.floor = floor;
    this.problems = problems;
    this.cells = cells;
  }

  /** The jobs of all rows that have no problem, in file order. */
  List<ShotJob> jobs(Table table) {
    header.askForUnits();
    Map<String, Set<String>> recipesByArticle = recipesByArticle(table.rows());
    JobList list = new JobList(floor, problems);
    for (TableRow row : table.rows()) {
      if (table.refuses(row, problems)) {
        continue;
      }
      JobDraft draft = draft(table, row);
      if (header.complete()) {
        nameJob(draft, recipesByArticle);
        remark(list.add(draft, header.place(row)), header.place(row));
      }
    }
    return list.jobs();
  }

  /** One line for each thing about the jobs that the user should see. */
  List<String> remarks() {
    return fewer.lines();
  }

  private void remark(@Nullable ShotJob job, JobPlace place) {
    if (job != null) {
      String field = JobField.HANDS_NEEDED.key();
      fewer.take(job.item(), place.column().apply(field), place.where().apply(field).text());
    }
  }

  private JobDraft draft(Table table, TableRow row) {
    JobDraft draft = new JobDraft();
    for (Header.Known known : header.columns()) {
      TableCell cell = row.cell(known.index());
      Column column = known.column();
      if (cell.isEmpty()) {
        continue;
      }
      Place where = table.place(row, known.index());
      Object value = header.unread(column) ? null : cells.read(where, known, cell);
      if (value == null) {
        draft.refuse(column.field());
        if (column == Column.ARTICLE && header.text(row, Column.ID).isEmpty()) {
          draft.refuse(JobField.ID); // which would be the article
        }
      } else if (column == Column.RECIPE && value instanceof String name) {
        draft.set(JobField.RECIPE, recipe(name));
      } else {
        draft.set(column.field(), value);
      }
    }
    for (Header.SetupColumn setup : header.setups()) {
      TableCell cell = row.cell(setup.index());
      TableFault fault = cell.fault();
      if (fault != null) {
        Place where = table.place(row, setup.index());
        problems.add(where, setup.written(), fault.value(), fault.accepted());
      } else if (!cell.isEmpty()) {
        draft.setSetup(setup.attribute().id(), setupValue(setup, cell.text()));
      }
    }
    return draft;
  }

  private static String setupValue(Header.SetupColumn setup, String text) {
    AttributeValue value =
        Names.find(setup.attribute().values(), text, AttributeValue::id, AttributeValue::label);
    return value == null ? text : value.id();
  }

  private String recipe(String text) {
    Recipe recipe = Names.find(floor.recipes(), text, Recipe::id, Recipe::label);
    return recipe == null ? text : recipe.id();
  }

  /** The recipes of each article among the rows without an id. */
  private Map<String, Set<String>> recipesByArticle(List<TableRow> rows) {
    Map<String, Set<String>> recipesByArticle = new HashMap<>();
    for (TableRow row : rows) {
      String article = header.text(row, Column.ARTICLE);
      String recipe = header.text(row, Column.RECIPE);
      if (header.text(row, Column.ID).isEmpty() && !article.isEmpty() && !recipe.isEmpty()) {
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
