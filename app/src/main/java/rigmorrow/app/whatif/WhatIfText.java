package rigmorrow.app.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rigmorrow.app.report.Counted;
import rigmorrow.app.terminal.Console;
import rigmorrow.app.terminal.Text;
import rigmorrow.app.terminal.TextTable;
import rigmorrow.model.comparison.Difference;
import rigmorrow.model.comparison.Figure;
import rigmorrow.model.comparison.ScenarioResult;
import rigmorrow.model.comparison.SmallChange;
import rigmorrow.model.scenario.Scenario;

/** Tells on a terminal what came of comparing scenarios. */
public final class WhatIfText {
  private final Compared compared;
  private final Console console;
  private final FigureText figures;
  private final List<String> lines = new ArrayList<>();

  /**
   * @param compared what to tell
   * @param console how wide and how coloured
   */
  public WhatIfText(Compared compared, Console console) {
    this.compared = compared;
    this.console = console;
    this.figures = new FigureText(compared.costs().currency());
  }

  /** The lines. */
  public List<String> lines() {
    List<ScenarioResult> results = compared.results();
    lines.add(console.bold(Text.cut(compared.study().name(), console.columns())));
    wrapped("", headline());
    if (compared.broken() > 0) {
      lines.add(
          console.warning(Counted.of(compared.broken(), "plan") + " break rules that must hold."));
    }
    Assumptions.first(compared, Assumptions.OTHER_DEMANDS)
        .forEach(sentence -> lines.addAll(Text.wrap("", "  ", sentence, console.columns())));
    ResultSentences sentences =
        new ResultSentences(compared.costs().currency(), compared.hasMoney());
    for (ScenarioResult result : results) {
      lines.add("");
      wrapped("", result.scenario().title() + " " + sentences.money(result));
      String value = sentences.presentValue(result);
      if (!value.isEmpty()) {
        wrapped("  ", value);
      }
      wrapped("  ", sentences.besides(result));
    }
    compared
        .again()
        .ifPresent(
            again -> {
              lines.add("");
              wrapped("", sentences.luck(again));
            });
    if (!results.isEmpty()) {
      tables(results);
    }
    smallChanges();
    return List.copyOf(lines);
  }

  private String headline() {
    String cells =
        compared.whole()
            ? Counted.of(compared.all(), "plan")
            : compared.cells().all().size() + " of " + Counted.of(compared.all(), "plan");
    return Counted.of(compared.study().scenarios().size(), "scenario")
        + " against the floor as it is on "
        + Counted.of(compared.days().size(), "day")
        + ", "
        + Counted.of(compared.settings().seeds(), "seed")
        + ": "
        + cells
        + " of "
        + compared.settings().effort()
        + ". Figures are means of a day.";
  }

  private void tables(List<ScenarioResult> results) {
    lines.add("");
    TextTable service =
        new TextTable(
            0,
            List.of(
                "scenario",
                ">left out",
                ">kept %",
                ">late (h)",
                ">last end",
                ">change (h)",
                ">over (h)"));
    TextTable use =
        new TextTable(
            0,
            List.of(
                "scenario", ">crew %", ">rigs AE %", ">UE %", ">cost/day", ">saves/day", ">days"));
    List<String> base = values(results.get(0), true);
    row(service, Scenario.BASE, base.subList(0, 6));
    row(use, Scenario.BASE, List.of(base.get(6), base.get(7), base.get(8), base.get(9), "", ""));
    for (ScenarioResult result : results) {
      List<String> values = values(result, false);
      row(service, result.scenario().name(), values.subList(0, 6));
      boolean ownDemand = result.payoff().isEmpty();
      double saved = -result.difference(Figure.COST).difference().middle();
      row(
          use,
          result.scenario().name(),
          List.of(
              values.get(6),
              values.get(7),
              values.get(8),
              values.get(9),
              ownDemand ? "-" : MoneyText.number(saved),
              "" + result.batches()));
    }
    lines.addAll(service.lines("", console.columns()));
    lines.add("");
    lines.addAll(use.lines("", console.columns()));
    wrapped(
        "",
        "h: hours with decimals, 1.5 h is 1 h 30 min. late: after promises, times weight. over:"
            + " overtime. crew: hands-on share of paid hours. AE and UE: allocation and utilisation efficiency, ISO 22400-2. Money in "
            + compared.costs().currency()
            + ".");
  }

  private List<String> values(ScenarioResult result, boolean base) {
    List<String> values = new ArrayList<>();
    for (Figure figure : FigureText.TOLD) {
      Difference difference = result.difference(figure);
      double value = base ? difference.base() : difference.scenario();
      values.add(
          switch (figure) {
            case COST -> MoneyText.number(value);
            case FINISHED -> figures.value(figure, value);
            default -> FigureText.decimal(value);
          });
    }
    return values;
  }

  private static void row(TextTable table, String name, List<String> values) {
    List<String> cells = new ArrayList<>(List.of(name));
    cells.addAll(values);
    table.row(cells.toArray(String[]::new));
  }

  private void smallChanges() {
    List<SmallChange> changes = compared.smallChanges();
    if (changes.isEmpty()) {
      return;
    }
    lines.add("");
    lines.add(console.bold("One more of each, by what it buys for its money"));
    wrapped(
        "", new ResultSentences(compared.costs().currency(), compared.hasMoney()).best(changes));
    TextTable table =
        new TextTable(
            0, List.of("change", ">buys/day", ">low", ">high", ">spends/day", ">ratio", "luck"));
    for (SmallChange change : changes) {
      OptionalDouble ratio = change.perMoney();
      table.row(
          ResultSentences.shortTitle(change),
          MoneyText.number(change.boughtPerDay().middle()),
          MoneyText.number(change.boughtPerDay().low()),
          MoneyText.number(change.boughtPerDay().high()),
          change.priced() ? MoneyText.number(change.spentPerDay()) : "no price",
          ratio.isPresent() ? MoneyText.ratio(ratio.getAsDouble()) : "-",
          change.sure() ? "" : "may be");
    }
    lines.addAll(table.lines("", console.columns()));
    wrapped(
        "",
        "buys: what lateness, jobs left out, overtime and rig hours cost less, with its interval."
            + " spends: more regular pay, and the price with interest and running cost in equal"
            + " parts. A ratio above 1 earns more than it costs. may be: the days cannot tell"
            + " whether it buys anything. Money in "
            + compared.costs().currency()
            + ".");
  }

  private void wrapped(String indent, String text) {
    lines.addAll(Text.wrap(indent, indent, text, console.columns()));
  }
}
