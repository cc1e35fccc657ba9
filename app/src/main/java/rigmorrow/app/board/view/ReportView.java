package rigmorrow.app.board.view;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The report of a comparison: the same sentences, figures and drawings as in its files.
 *
 * @param warnings what must be known before anything else; mostly none
 * @param first what is to be known of the answers: how little they rest on, which plans are not of
 *     this run, which demands were planned
 * @param savings what a day saves under each scenario; null where there is no money
 * @param luck how big luck alone is; empty where that was not asked
 * @param oneMore what small changes buy; null where that was not asked
 * @param plans that it rests on
 */
public record ReportView(
    String title,
    String subtitle,
    List<String> warnings,
    List<String> first,
    List<AnswerView> answers,
    @Nullable LanesView savings,
    FigureTableView figures,
    String luck,
    List<ScenarioPartView> sections,
    @Nullable OneMoreView oneMore,
    List<String> assumptions,
    int plans) {

  /**
   * What is to be said of a scenario.
   *
   * @param sentence its money, beginning with a verb
   */
  public record AnswerView(String title, String sentence, List<String> more) {}

  /** A table; the first cell of each row is its name. */
  public record FigureTableView(List<String> heads, List<List<String>> rows) {}

  /**
   * All of one scenario.
   *
   * @param facts each a name and a value
   * @param spread cost of the days; null where there is no money
   * @param demand how payback or saving depends on demand; null where there is nothing to draw
   * @param demandBasis whether that was planned or assumed
   * @param byDay what the drawings of days show
   * @param byHour what the drawings of a day's course show
   */
  public record ScenarioPartView(
      String id,
      AnswerView answer,
      List<List<String>> facts,
      FigureTableView figures,
      @Nullable LanesView spread,
      @Nullable LanesView demand,
      String demandBasis,
      PlaneView finishing,
      List<PlaneView> loads,
      FigureTableView byDay,
      FigureTableView byHour) {}

  /** What small changes buy. */
  public record OneMoreView(String best, LanesView chart, FigureTableView table) {}

  /**
   * Lanes one below the other over an axis that goes across.
   *
   * @param spoken what it shows, for those who do not see it
   * @param width of a lane's box
   * @param height of a lane's box
   */
  public record LanesView(
      String title,
      String spoken,
      String unit,
      int width,
      int height,
      List<AxisMarkView> axis,
      List<LaneView> lanes) {}

  /** One lane: its label, its value in words, its drawing. */
  public record LaneView(String label, String value, List<LayerView> layers) {}

  /**
   * A drawing with an axis that goes across and one that goes up.
   *
   * @param base what the floor as it is looks like, in words
   * @param scenario what the scenario looks like, in words
   */
  public record PlaneView(
      String title,
      String spoken,
      int width,
      int height,
      List<AxisMarkView> across,
      List<AxisMarkView> up,
      List<LayerView> layers,
      String base,
      String scenario) {}

  /**
   * A number beside an axis.
   *
   * @param percent from the left or from the top
   */
  public record AxisMarkView(String text, double percent) {}

  /**
   * A part of a drawing.
   *
   * @param ink what it stands for: faint, base, scenario or mark
   * @param path data of an SVG path
   */
  public record LayerView(String ink, String path) {}
}
