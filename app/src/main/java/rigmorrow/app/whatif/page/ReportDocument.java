package rigmorrow.app.whatif.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.print.Paper;

/**
 * Everything that the template of the report prints.
 *
 * @param title what was asked
 * @param subtitle on what it rests, in short
 * @param warnings what must be known before anything else; mostly none
 * @param first what is to be known of the answers: how little they rest on, which plans are not of
 *     this run, which demands were planned
 * @param answers one for each scenario
 * @param savings what a day saves under each; null where there is no money
 * @param figures of all scenarios side by side
 * @param luck how big luck alone is; empty where that was not asked
 * @param sections one for each scenario
 * @param oneMore what small changes buy; null where that was not asked
 * @param assumptions sentences
 * @param program name and version
 * @param paper to print on
 * @param forPdf true for the page that becomes a PDF file, false for one that a browser shows
 */
public record ReportDocument(
    String title,
    String subtitle,
    List<String> warnings,
    List<String> first,
    List<Answer> answers,
    @Nullable LaneChart savings,
    FigureTable figures,
    String luck,
    List<Section> sections,
    @Nullable OneMore oneMore,
    List<String> assumptions,
    String program,
    Paper paper,
    boolean forPdf) {
  public ReportDocument {
    warnings = List.copyOf(warnings);
    first = List.copyOf(first);
    answers = List.copyOf(answers);
    sections = List.copyOf(sections);
    assumptions = List.copyOf(assumptions);
  }

  /**
   * What is to be said of a scenario.
   *
   * @param title of the scenario
   * @param sentence its money, beginning with a verb
   * @param more sentences
   */
  public record Answer(String title, String sentence, List<String> more) {
    public Answer {
      more = List.copyOf(more);
    }
  }

  /**
   * A table of figures.
   *
   * @param heads of the columns; the first is that of the names
   * @param rows as many cells as heads
   */
  public record FigureTable(List<String> heads, List<List<String>> rows) {
    public FigureTable {
      heads = List.copyOf(heads);
      rows = rows.stream().map(List::copyOf).toList();
    }
  }

  /**
   * All of one scenario.
   *
   * @param id unique on the page
   * @param answer in words
   * @param facts what is bought and changed, each a name and a value
   * @param figures each with the floor as it is, the scenario and the difference
   * @param spread cost of the days; null where there is no money
   * @param demand how payback or saving depends on demand; null where there is no money or it never
   *     pays back
   * @param demandBasis whether that was planned or assumed
   * @param finishing when the last job ends on each day
   * @param loads how busy the floor is in the course of a day
   * @param byDay what the drawings of days show, as a table
   * @param byHour what the drawings of a day's course show, as a table
   */
  public record Section(
      String id,
      Answer answer,
      List<List<String>> facts,
      FigureTable figures,
      @Nullable LaneChart spread,
      @Nullable LaneChart demand,
      String demandBasis,
      PlaneChart finishing,
      List<PlaneChart> loads,
      FigureTable byDay,
      FigureTable byHour) {
    public Section {
      facts = facts.stream().map(List::copyOf).toList();
      loads = List.copyOf(loads);
    }
  }

  /**
   * What small changes buy.
   *
   * @param best which buys most for its money, in a sentence
   * @param chart what each buys in a day, best for its money first
   * @param table the same in words
   */
  public record OneMore(String best, LaneChart chart, FigureTable table) {}
}
