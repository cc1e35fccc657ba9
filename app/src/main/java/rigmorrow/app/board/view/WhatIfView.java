package rigmorrow.app.board.view;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What scenarios are compared, on which days, and how far that is.
 *
 * @param change grows with everything but the progress; begins anew when the program does
 * @param days NONE, READING, READY or REFUSED
 * @param sentence what there is to say of the days
 * @param problems with the days, where they are refused
 * @param floor what scenarios may name; null while there are no days
 * @param note what there is to say of the scenarios that were chosen before; mostly empty
 * @param scenarios that were chosen; null while there are none
 * @param refused a file or a change that was not taken just now, with what is wrong with it; null
 *     otherwise
 * @param settings how they were compared last, or the usual
 * @param comparison how far it is
 */
public record WhatIfView(
    long change,
    String days,
    String sentence,
    List<PlacedProblemView> problems,
    @Nullable FloorNamesView floor,
    String note,
    @Nullable ScenariosView scenarios,
    @Nullable RefusedView refused,
    SettingsView settings,
    ComparisonView comparison) {

  /**
   * Something that is wrong.
   *
   * @param where path in the file, or day
   */
  public record PlacedProblemView(String where, String field, String value, String accepted) {}

  /** Names of what the first day's floor has. */
  public record FloorNamesView(
      String currency, List<NamedView> rigs, List<NamedView> operators, List<NamedView> kits) {}

  /** A thing by its id, and what it is called beside that. */
  public record NamedView(String id, String title) {}

  /**
   * Scenarios.
   *
   * @param number names them in later requests
   * @param fileName to be shown
   * @param name what they are about
   * @param interestPercent in a year, where neither the list nor a purchase says it
   * @param rigPrices what another rig like one costs, where the file says it
   * @param kitPrices what another piece of a kit costs, where the file says it
   */
  public record ScenariosView(
      long number,
      String fileName,
      String name,
      List<ScenarioView> scenarios,
      double interestPercent,
      List<PriceView> rigPrices,
      List<PriceView> kitPrices) {}

  /**
   * What one more of a thing costs, in the floor's currency.
   *
   * @param id of the rig or kit
   * @param interestPercent in a year
   * @param runningPerYear what it costs to keep
   */
  public record PriceView(
      String id, double price, int lifeYears, double interestPercent, double runningPerYear) {}

  /**
   * A scenario.
   *
   * @param name unique
   * @param price what is bought, in words; empty for nothing
   */
  public record ScenarioView(String name, String title, String price) {}

  /** What was not taken. */
  public record RefusedView(String what, List<PlacedProblemView> problems) {}

  /**
   * How scenarios are compared.
   *
   * @param seconds for each plan; null where steps stop it
   * @param steps of each plan; 0 where time stops it
   * @param demand other demands, per cent
   */
  public record SettingsView(
      @Nullable Integer seconds,
      long steps,
      int seeds,
      List<Double> demand,
      boolean again,
      boolean oneMore) {}

  /**
   * How far a comparison is.
   *
   * @param change that of everything else there is to see
   * @param state NONE, RUNNING, STOPPED, DONE, FAILED
   * @param sentence the same in words
   * @param done plans that are there
   * @param all plans there will be
   * @param leftSeconds below 0 where nobody knows
   */
  public record ComparisonView(
      long change, String state, String sentence, int done, int all, long leftSeconds) {}

  /**
   * What a comparison would take.
   *
   * @param plans how many
   * @param known plans that are there already
   * @param seconds for the others; null where nobody knows
   * @param sentence all of it
   */
  public record EstimateView(int plans, int known, @Nullable Long seconds, String sentence) {}
}
