package rigmorrow.app.whatif;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.report.Json;
import rigmorrow.model.comparison.Difference;
import rigmorrow.model.comparison.Figure;
import rigmorrow.model.comparison.Pair;
import rigmorrow.model.comparison.Payoff;
import rigmorrow.model.comparison.ScenarioResult;
import rigmorrow.model.comparison.SmallChange;
import rigmorrow.model.money.Investment;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.statistic.Interval;

/** What came of comparing scenarios as one document. */
public final class WhatIfJson {
  private WhatIfJson() {}

  /** The document. */
  public static ObjectNode of(Compared compared) {
    ObjectNode document =
        Json.document()
            .put("name", compared.study().name())
            .put("program", compared.program())
            .put("currency", compared.costs().currency())
            .put("effort", compared.settings().effort())
            .put("seeds", compared.settings().seeds())
            .put("plans", compared.cells().all().size())
            .put("plansInAll", compared.all())
            .put("plansThereBefore", compared.reused())
            .put("plansThatBreakRules", compared.broken())
            .put("workingDaysPerYear", compared.study().terms().workingDaysPerYear());
    ArrayNode days = document.putArray("days");
    compared.days().forEach(day -> days.add(day.name()));
    ResultSentences sentences =
        new ResultSentences(compared.costs().currency(), compared.hasMoney());
    ArrayNode scenarios = document.putArray("scenarios");
    for (ScenarioResult result : compared.results()) {
      ObjectNode node = scenarios.addObject();
      scenario(node, result, sentences);
      ArrayNode demands = node.putArray("byDemand");
      compared
          .byDemand(result.scenario())
          .forEach((percent, other) -> demand(demands.addObject(), percent, other));
      curves(node.putObject("load"), compared, result.scenario());
    }
    curves(document.putObject("load"), compared, Scenario.base());
    compared
        .again()
        .ifPresent(
            again ->
                interval(
                    document.putObject("again").putObject("costDifference"),
                    again.difference(Figure.COST).difference()));
    ArrayNode changes = document.putArray("oneMore");
    compared.smallChanges().forEach(change -> small(changes.addObject(), change));
    List<String> assumptions = new ArrayList<>(Assumptions.of(compared));
    assumptions.addAll(Assumptions.first(compared, Assumptions.OTHER_DEMANDS));
    Json.strings(document.putArray("assumptions"), assumptions);
    return document;
  }

  private static void scenario(ObjectNode node, ScenarioResult result, ResultSentences sentences) {
    Scenario scenario = result.scenario();
    node.put("name", scenario.name()).put("title", scenario.title());
    node.put("sentence", scenario.title() + " " + sentences.money(result));
    node.put("besides", sentences.besides(result));
    purchase(node, scenario.purchase());
    money(node, result.payoff());
    ObjectNode figures = node.putObject("figures");
    for (Figure figure : FigureText.TOLD) {
      Difference difference = result.difference(figure);
      ObjectNode one = figures.putObject(figure.name().toLowerCase(Locale.ROOT));
      one.put("asItIs", difference.base()).put("scenario", difference.scenario());
      interval(one.putObject("difference"), difference.difference());
    }
    ArrayNode pairs = node.putArray("costByDay");
    for (Pair pair : result.difference(Figure.COST).pairs()) {
      pairs
          .addObject()
          .put("day", pair.batch())
          .put("asItIs", pair.base())
          .put("scenario", pair.scenario());
    }
  }

  private static void purchase(ObjectNode node, @Nullable Investment purchase) {
    if (purchase != null) {
      node.putObject("purchase")
          .put("price", purchase.price())
          .put("lifeYears", purchase.lifeYears())
          .put("interestPercent", purchase.interestPercent())
          .put("runningPerYear", purchase.runningPerYear());
    }
  }

  private static void money(ObjectNode node, Optional<Payoff> payoff) {
    node.put("verdict", payoff.map(known -> known.verdict().name()).orElse("OTHER_DEMAND"));
    if (payoff.isEmpty()) {
      return;
    }
    interval(node.putObject("savedPerDay"), payoff.get().savedPerDay());
    years(node, "paybackYears", payoff.get().simplePayback());
    years(node, "discountedPaybackYears", payoff.get().payback());
    Interval value = payoff.get().netPresentValue();
    if (value != null) {
      interval(node.putObject("netPresentValue"), value);
    }
  }

  /** A length of never is null. */
  private static void years(ObjectNode node, String name, Payoff.@Nullable Years years) {
    if (years != null) {
      node.putObject(name)
          .put("soonest", orNull(years.soonest()))
          .put("middle", orNull(years.middle()))
          .put("latest", orNull(years.latest()));
    }
  }

  private static void demand(ObjectNode node, double percent, ScenarioResult result) {
    node.put("percent", percent);
    money(node, result.payoff());
  }

  private static void curves(ObjectNode node, Compared compared, Scenario scenario) {
    ArrayNode rigs = node.putArray("rigsTakenByHalfHour");
    compared.cells().rigLoad(scenario.name()).forEach(rigs::add);
    ArrayNode crew = node.putArray("crewAtWorkByHalfHour");
    compared.cells().crewLoad(scenario.name()).forEach(crew::add);
  }

  private static void small(ObjectNode node, SmallChange change) {
    node.put("name", change.result().scenario().name());
    node.put("title", change.result().scenario().title());
    interval(node.putObject("boughtPerDay"), change.boughtPerDay());
    node.put("spentPerDay", change.priced() ? (Double) change.spentPerDay() : null);
    node.put("boughtPerMoney", orNull(change.perMoney()));
  }

  private static void interval(ObjectNode node, Interval interval) {
    node.put("mean", interval.middle());
    node.put("low", interval.low()).put("high", interval.high()).put("days", interval.count());
  }

  private static @Nullable Double orNull(OptionalDouble value) {
    return value.isPresent() ? (Double) value.getAsDouble() : null;
  }
}
