package rigmorrow.app.board.api;

import java.util.List;
import org.jspecify.annotations.Nullable;
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
