package rigmorrow.app.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.terminal.Console;
import rigmorrow.app.terminal.Text;
import rigmorrow.data.column.TableNotes;
import rigmorrow.data.sizes.SizesMerging;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/** What was read of a shot list, how it was understood, and what is still to be measured. */
public final class ImportReport {
  private final ShotList list;
  private final @Nullable TableNotes notes;
  private final List<String> remarks;
  private final @Nullable SizesMerging sizes;
  private final Map<ShotJob, List<String>> unmeasured = new LinkedHashMap<>();

  /**
   * @param batch that was read
   * @param notes how a table was understood; null for another kind of file
   * @param remarks what looks odd in another kind of file
   * @param sizes what came of the measured sizes; null without any
   */
  public ImportReport(
      Batch batch, @Nullable TableNotes notes, List<String> remarks, @Nullable SizesMerging sizes) {
    this.list = batch.shotList();
    this.notes = notes;
    this.remarks = List.copyOf(remarks);
    this.sizes = sizes;
    for (ShotJob job : list.jobs()) {
      if (!job.item().measured()) {
        unmeasured.put(job, unmeasured(job.item()));
      }
    }
  }

  /** The report as text for a terminal, line by line. */
  public List<String> lines(Console console) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "%s for %s, days: %d; %d to be measured"
            .formatted(
                Counted.of(list.jobs().size(), "job"),
                list.date(),
                list.days(),
                unmeasured.size()));
    if (notes != null) {
      section(lines, "read as", notes.lines(), console);
    }
    if (!remarks.isEmpty()) {
      section(lines, "looks odd", remarks, console);
    }
    if (sizes != null) {
      section(lines, "sizes", sizes.lines(), console);
    }
    List<String> jobs = new ArrayList<>();
    unmeasured.forEach(
        (job, fields) ->
            jobs.add(job.id() + " " + job.name() + ": " + String.join(", ", fields) + " missing"));
    if (!jobs.isEmpty()) {
      section(lines, "needs measuring", jobs, console);
    }
    return lines;
  }

  /**
   * The report as a document.
   *
   * @param written the file that the list was written to; null for none
   */
  public ObjectNode document(@Nullable String written) {
    ObjectNode document = Json.document().put("jobs", list.jobs().size());
    document.put("date", list.date().toString()).put("days", list.days());
    ArrayNode jobs = document.putArray("unmeasured");
    unmeasured.forEach(
        (job, fields) -> strings(jobs.addObject().put("job", job.id()), "fields", fields));
    document.set("read", notes == null ? null : node(notes));
    strings(document, "remarks", remarks);
    document.set("sizes", sizes == null ? null : node(sizes));
    return document.put("written", written);
  }

  private static List<String> unmeasured(Item item) {
    Map<String, @Nullable Number> figures = new LinkedHashMap<>();
    figures.put("lengthMm", item.lengthMm());
    figures.put("widthMm", item.widthMm());
    figures.put("heightMm", item.heightMm());
    figures.put("massKg", item.massKg());
    return figures.keySet().stream().filter(field -> figures.get(field) == null).toList();
  }

  private static void section(
      List<String> lines, String title, List<String> content, Console console) {
    lines.add("");
    lines.add(console.bold(title));
    for (String line : content) {
      lines.addAll(Text.wrap("  ", "    ", line, console.columns()));
    }
  }

  private static ObjectNode node(TableNotes notes) {
    Character delimiter = notes.form().delimiter();
    Character mark = notes.decimalMark();
    ObjectNode node = Json.node().put("charset", given(notes.form().charset()));
    node.put("delimiter", delimiter == null ? null : delimiter.toString());
    node.put("sheet", given(notes.form().sheet()));
    node.put("decimalMark", mark == null ? null : mark.toString());
    strings(node, "conversions", notes.conversions());
    strings(node, "unknownColumns", notes.unknownColumns());
    strings(node, "remarks", notes.remarks());
    return node;
  }

  private static ObjectNode node(SizesMerging sizes) {
    ObjectNode node = node(sizes.notes()).put("articles", sizes.articles());
    node.put("matchedJobs", sizes.matchedJobs()).put("filled", sizes.filled());
    ArrayNode differences = node.putArray("differences");
    for (SizesMerging.Difference difference : sizes.differences()) {
      differences
          .addObject()
          .put("job", difference.job())
          .put("field", difference.field().key())
          .put("listed", difference.listed().toString())
          .put("measured", difference.measured().toString())
          .put("taken", difference.taken());
    }
    strings(node, "unmatchedArticles", sizes.unmatched());
    return node;
  }

  private static void strings(ObjectNode node, String name, List<String> words) {
    ArrayNode list = node.putArray(name);
    words.forEach(list::add);
  }

  private static @Nullable String given(String text) {
    return text.isEmpty() ? null : text;
  }
}
