package rigmorrow.data.sizes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.column.CellReader;
import rigmorrow.data.column.DecimalMark;
import rigmorrow.data.column.Header;
import rigmorrow.data.column.TableKind;
import rigmorrow.data.column.TableNotes;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Place;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.shot.JobDraft;
import rigmorrow.data.shot.JobField;
import rigmorrow.data.shot.JobPlace;
import rigmorrow.data.table.Table;
import rigmorrow.data.table.TableOptions;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/**
 * Puts the sizes that a device measured into the jobs of their articles. What the list lacks is
 * filled in; an estimate gives way to a measurement; a value that the list gives as a fact stays,
 * unless the user prefers the device, and the difference is told.
 */
public final class SizesMerge {
  private static final List<JobField> FIELDS =
      List.of(JobField.LENGTH_MM, JobField.WIDTH_MM, JobField.HEIGHT_MM, JobField.MASS_KG);

  private final Map<String, MeasuredArticle> articles;
  private final Floor floor;
  private final boolean preferred;
  private final Problems problems;
  private final List<SizesMerging.Difference> differences = new ArrayList<>();
  private final Map<String, List<String>> lacking = new LinkedHashMap<>();
  private int matched;
  private int filled;

  private SizesMerge(
      Map<String, MeasuredArticle> articles, Floor floor, boolean preferred, Problems problems) {
    this.articles = articles;
    this.floor = floor;
    this.preferred = preferred;
    this.problems = problems;
  }

  /**
   * Reads a table of sizes and merges it into a shot list; the format is described in FORMAT.md.
   *
   * @param preferred true when the device's values go before those of the list
   * @param problems may hold some about the table already
   * @throws InputException with every problem of the table, and of jobs its values do not fit
   */
  public static SizesMerging merge(
      Table table,
      TableOptions options,
      ShotList list,
      Floor floor,
      boolean preferred,
      Problems problems)
      throws InputException {
    Header header = new Header(table, TableKind.SIZES, List.of(), problems);
    DecimalMark mark = DecimalMark.settle(options, header, table);
    CellReader cells = new CellReader(problems, list.date(), mark, header, table);
    Map<String, MeasuredArticle> articles =
        new SizesRows(table, header, cells, problems).articles();
    problems.throwIfAny();
    SizesMerge merge = new SizesMerge(articles, floor, preferred, problems);
    return merge.into(list, TableNotes.of(table, header, mark, cells));
  }

  private SizesMerging into(ShotList list, TableNotes notes) throws InputException {
    List<ShotJob> jobs = new ArrayList<>();
    Set<String> unmatched = new LinkedHashSet<>(articles.keySet());
    for (ShotJob job : list.jobs()) {
      MeasuredArticle article = articles.get(job.article());
      unmatched.remove(job.article());
      ShotJob merged = article == null ? job : merged(job, article);
      if (merged != null) {
        jobs.add(merged);
        noteLacking(merged);
      }
    }
    problems.throwIfAny();
    return new SizesMerging(
        new ShotList(list.date(), list.days(), jobs, list.pins(), list.heldBack()),
        notes,
        articles.size(),
        matched,
        filled,
        differences,
        unmatched.stream().map(article -> withGuess(article, list)).toList(),
        lacking);
  }

  private @Nullable ShotJob merged(ShotJob job, MeasuredArticle article) {
    matched++;
    JobDraft draft = JobDraft.of(job);
    boolean all = true;
    for (JobField field : FIELDS) {
      Object measured = article.value(field);
      all &= measured != null;
      if (measured != null) {
        draft.set(field, taken(job, field, draft.get(field), measured));
      }
    }
    if (all && job.item().estimated()) {
      draft.set(JobField.ESTIMATED, false);
    }
    Object height = article.value(JobField.HEIGHT_MM);
    if (height != null && height.equals(draft.get(JobField.HEIGHT_MM))) {
      draft.set(JobField.HEIGHT_SOURCE, HeightSource.DEVICE);
    }
    Place place = Place.of(article.place() + ", job " + job.id());
    return draft.toJob(floor, problems, new JobPlace(field -> place, field -> field));
  }

  private Object taken(ShotJob job, JobField field, @Nullable Object listed, Object measured) {
    if (listed == null) {
      filled++;
      return measured;
    }
    if (listed.equals(measured)) {
      return listed;
    }
    boolean estimate = job.item().estimated();
    String why =
        preferred
            ? "--prefer-sizes"
            : estimate ? "it was an estimate" : "--prefer-sizes takes the device's";
    boolean takes = preferred || estimate;
    differences.add(new SizesMerging.Difference(job.id(), field, listed, measured, takes, why));
    return takes ? measured : listed;
  }

  private void noteLacking(ShotJob job) {
    JobDraft draft = JobDraft.of(job);
    List<String> fields =
        FIELDS.stream().filter(field -> draft.get(field) == null).map(JobField::key).toList();
    if (!fields.isEmpty()) {
      lacking.put(job.id(), fields);
    }
  }

  /** An article that has lost its zeros in front is not taken for another, but it is told. */
  private static String withGuess(String article, ShotList list) {
    String bare = bare(article);
    return list.jobs().stream()
        .map(ShotJob::article)
        .filter(other -> bare(other).equals(bare))
        .findFirst()
        .map(other -> article + " (is " + other + " meant?)")
        .orElse(article);
  }

  private static String bare(String article) {
    return article.replaceFirst("^0+(?=.)", "");
  }
}
