package rigmorrow.app.board.view;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.view.BoardView.SpanView;

/**
 * A job and what the plan does with it. Times are seconds from the plan's origin.
 *
 * @param recipeName what the recipe is called
 * @param promise null when any time will do
 * @param arrives when its sample comes; null when it is there
 * @param leaves when its sample must be off the rig; null when it stays
 * @param loading how it is measured, placed, hung and powered, line by line
 * @param fits ids of the rigs that pass the fit check
 * @param setup what it asks of the rig, attribute by attribute, as text
 * @param pin null when it has none
 * @param placing null when it is left out
 * @param leftOut null when it is planned
 */
public record JobView(
    String id,
    String article,
    String name,
    String sample,
    String recipe,
    String recipeName,
    int weight,
    @Nullable PromiseView promise,
    @Nullable Integer arrives,
    @Nullable Integer leaves,
    @Nullable String note,
    String size,
    List<String> loading,
    List<String> fits,
    List<String> setup,
    List<String> cautions,
    @Nullable PinView pin,
    @Nullable PlacingView placing,
    @Nullable LeftOutView leftOut) {

  /**
   * When pictures are due.
   *
   * @param due second
   * @param dueAt floor time, YYYY-MM-DDTHH:MM
   */
  public record PromiseView(int due, String dueAt, boolean must) {}

  /**
   * A pin.
   *
   * @param place 0 for the first; null for any
   * @param startsAt floor time, YYYY-MM-DDTHH:MM; null for any
   * @param state PLANNED, RUNNING or DONE
   */
  public record PinView(
      String rig, @Nullable Integer place, @Nullable String startsAt, String state) {}

  /**
   * Where and when a job is done. Its parts follow each other; what lies between them is waiting.
   *
   * @param place 0 for the first of its rig
   * @param changeover null when there is nothing to do
   * @param warmUp after the changeover, nobody needed; null when there is none
   * @param steps of the changeover in words
   * @param kit pieces used in words
   */
  public record PlacingView(
      String job,
      String rig,
      int place,
      int start,
      int end,
      @Nullable SpanView changeover,
      @Nullable SpanView warmUp,
      SpanView load,
      SpanView capture,
      SpanView unload,
      List<String> changeoverOperators,
      List<String> loadOperators,
      List<String> captureOperators,
      List<String> unloadOperators,
      List<String> steps,
      List<String> kit,
      int lateSeconds) {}

  /**
   * Why a job is left out.
   *
   * @param cause NEEDS_MEASURING, NO_RIG, NO_ROOM or HELD_BACK
   */
  public record LeftOutView(String cause, List<String> sentences) {}
}
