package rigmorrow.app.board.api;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.scenario.UsualChange;
import rigmorrow.app.board.touch.Touch;

/**
 * The bodies of wishes. A revision is that of the board as the page shows it: a wish about another
 * is refused.
 */
public final class Requests {
  private Requests() {}

  /** Nothing to say. */
  public record NothingRequest() {}

  /** About the board as it is. */
  public record RevisionRequest(long revision) {}

  /** Something to do to the plan. */
  public record TouchRequest(long revision, Touch touch) {}

  /**
   * Plan again around the pins.
   *
   * @param seconds how long, 1 to 3600
   */
  public record SearchRequest(long revision, int seconds) {}

  /** Put the plan by. */
  public record NoteRequest(long revision, String note) {}

  /**
   * A usual change to be compared besides.
   *
   * @param number of the scenarios it is added to; 0 where there are none
   * @param purchase what has to be bought for it
   */
  public record ScenarioRequest(
      long number, UsualChange change, @Nullable PurchaseRequest purchase) {}

  /**
   * Something that is bought once, in the floor's currency.
   *
   * @param interestPercent in a year
   * @param runningPerYear what it costs to keep
   */
  public record PurchaseRequest(
      double price, int lifeYears, double interestPercent, double runningPerYear) {}

  /** A scenario of those of that number. */
  public record ScenarioNameRequest(long number, String name) {}

  /**
   * Compare scenarios.
   *
   * @param number of the scenarios
   * @param seconds for each plan, 1 to 3600; null where steps stop it
   * @param steps of each plan; null where seconds stop it
   * @param seeds 1 to 100
   * @param demand other demands to plan everything under too, -90 to 200 per cent, each once
   * @param again true to plan the floor as it is once more with other seeds
   * @param oneMore true to compare one more of each rig, operator and piece of kit besides
   */
  public record CompareRequest(
      long number,
      @Nullable Integer seconds,
      @Nullable Long steps,
      int seeds,
      List<Double> demand,
      boolean again,
      boolean oneMore) {}

  /** Cells of a table that are mended. */
  public record CellsRequest(List<CellRequest> cells) {}

  /**
   * A cell.
   *
   * @param row as the spreadsheet counts it
   * @param column 1 for the first
   * @param value what shall stand there; empty for nothing
   */
  public record CellRequest(int row, int column, String value) {}

  /**
   * What a file does not say by itself; null for what is usual or can be found in the file.
   *
   * @param date first day, YYYY-MM-DD
   * @param days 1 to 31
   * @param delimiter comma, semicolon or tab, as the sign or the word
   * @param decimal comma or point, as the sign or the word
   * @param sheet of a workbook
   */
  public record OptionsRequest(
      @Nullable String date,
      @Nullable Integer days,
      @Nullable String delimiter,
      @Nullable String decimal,
      @Nullable String sheet) {}
}
