package rigmorrow.app.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import rigmorrow.model.comparison.Difference;
import rigmorrow.model.comparison.Figure;
import rigmorrow.model.comparison.ScenarioResult;

/** All figures as a table for spreadsheets (RFC 4180), one row for each scenario and figure. */
public final class WhatIfCsv {
  private static final List<String> HEADS =
      List.of(
          "scenario",
          "demandPercent",
          "figure",
          "unit",
          "asItIs",
          "scenarioValue",
          "difference",
          "low",
          "high",
          "days");

  private WhatIfCsv() {}

  /** The text of the file. */
  public static String of(Compared compared) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(HEADS);
    for (ScenarioResult usual : compared.results()) {
      compared
          .byDemand(usual.scenario())
          .forEach((percent, result) -> rows(rows, percent, result, compared.costs().currency()));
    }
    return rows.stream()
        .map(row -> row.stream().map(WhatIfCsv::cell).collect(Collectors.joining(",")) + "\r\n")
        .collect(Collectors.joining());
  }

  private static void rows(
      List<List<String>> rows, double percent, ScenarioResult result, String currency) {
    for (Figure figure : FigureText.TOLD) {
      Difference difference = result.difference(figure);
      rows.add(
          List.of(
              result.scenario().name(),
              number(percent),
              figure.name().toLowerCase(Locale.ROOT),
              unit(figure, currency),
              number(difference.base()),
              number(difference.scenario()),
              number(difference.difference().middle()),
              number(difference.difference().low()),
              number(difference.difference().high()),
              "" + difference.pairs().size()));
    }
  }

  private static String unit(Figure figure, String currency) {
    return switch (figure) {
      case COST, REGULAR_PAY, OTHER_COST -> currency;
      case LEFT_OUT -> "jobs";
      case KEPT, CREW_USE, ALLOCATION, UTILISATION -> "%";
      default -> "h";
    };
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.4f", value).replaceAll("\\.?0+$", "");
  }

  private static String cell(String text) {
    return text.matches("[^,\"\\r\\n]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
  }
}
