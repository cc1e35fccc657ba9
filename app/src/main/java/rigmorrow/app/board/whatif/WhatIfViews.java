package rigmorrow.app.board.whatif;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.scenario.ScenarioDocument;
import rigmorrow.app.board.view.WhatIfView;
import rigmorrow.app.board.view.WhatIfView.ComparisonView;
import rigmorrow.app.board.view.WhatIfView.EstimateView;
import rigmorrow.app.board.view.WhatIfView.FloorNamesView;
import rigmorrow.app.board.view.WhatIfView.NamedView;
import rigmorrow.app.board.view.WhatIfView.PlacedProblemView;
import rigmorrow.app.board.view.WhatIfView.PriceView;
import rigmorrow.app.board.view.WhatIfView.RefusedView;
import rigmorrow.app.board.view.WhatIfView.ScenarioView;
import rigmorrow.app.board.view.WhatIfView.ScenariosView;
import rigmorrow.app.board.view.WhatIfView.SettingsView;
import rigmorrow.app.report.Counted;
import rigmorrow.app.whatif.Estimate;
import rigmorrow.app.whatif.MoneyText;
import rigmorrow.app.whatif.RunSettings;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.money.Investment;
import rigmorrow.model.scenario.SmallChanges;
import rigmorrow.solver.whatif.Past;

/** What a board compares, for the page. */
public final class WhatIfViews {
  private WhatIfViews() {}

  /**
   * The view of what there is to see.
   *
   * @param refused what was not taken just now; null for nothing
   */
  public static WhatIfView of(Look look, @Nullable RefusedView refused) {
    List<Past> days = look.days().days();
    Floor floor = days.isEmpty() ? null : days.get(0).batch().floor();
    return new WhatIfView(
        look.change(),
        look.days().state().name(),
        look.days().sentence(),
        problems(look.days().problems()),
        floor == null ? null : names(floor),
        look.note(),
        floor == null ? null : scenarios(look.document(), floor.costs().currency()),
        refused,
        settings(look.settings()),
        comparison(look.change(), look.progress()));
  }

  /** What was not taken, with what is wrong with it. */
  public static RefusedView refused(String what, List<InputProblem> problems) {
    return new RefusedView(what, problems(problems));
  }

  /** How far a comparison is. */
  public static ComparisonView comparison(long change, ComparisonProgress progress) {
    return new ComparisonView(
        change,
        progress.state().name(),
        progress.sentence(),
        progress.done(),
        progress.all(),
        progress.leftSeconds());
  }

  /** What a comparison would take. */
  public static EstimateView estimate(Estimate estimate) {
    Long seconds = estimate.seconds().isPresent() ? (Long) estimate.seconds().getAsLong() : null;
    return new EstimateView(estimate.plans(), estimate.known(), seconds, estimate.sentence());
  }

  private static List<PlacedProblemView> problems(List<InputProblem> problems) {
    return problems.stream()
        .map(
            problem ->
                new PlacedProblemView(
                    problem.where(), problem.field(), problem.value(), problem.accepted()))
        .toList();
  }

  private static FloorNamesView names(Floor floor) {
    return new FloorNamesView(
        floor.costs().currency(),
        floor.rigs().stream().map(rig -> named(rig.id(), rig.name())).toList(),
        floor.crew().stream().map(one -> named(one.id(), one.name())).toList(),
        floor.kits().stream().map(kit -> named(kit.id(), kit.label())).toList());
  }

  private static NamedView named(String id, String name) {
    return new NamedView(id, SmallChanges.named(id, name));
  }

  private static @Nullable ScenariosView scenarios(
      @Nullable ScenarioDocument document, String currency) {
    return document == null
        ? null
        : new ScenariosView(
            document.number(),
            document.name(),
            document.study().name(),
            document.study().scenarios().stream()
                .map(
                    one ->
                        new ScenarioView(one.name(), one.title(), price(one.purchase(), currency)))
                .toList(),
            document.interestPercent(),
            prices(document.study().prices().rigs()),
            prices(document.study().prices().kits()));
  }

  private static List<PriceView> prices(Map<String, Investment> prices) {
    return new TreeMap<>(prices)
        .entrySet().stream()
            .map(
                thing -> {
                  Investment one = thing.getValue();
                  return new PriceView(
                      thing.getKey(),
                      one.price(),
                      one.lifeYears(),
                      one.interestPercent(),
                      one.runningPerYear());
                })
            .toList();
  }

  private static String price(@Nullable Investment purchase, String currency) {
    return purchase == null
        ? ""
        : new MoneyText(currency).amount(purchase.price())
            + ", used for "
            + Counted.of(purchase.lifeYears(), "year");
  }

  private static SettingsView settings(RunSettings settings) {
    Duration time = settings.time();
    return new SettingsView(
        time == null ? null : (Integer) (int) time.toSeconds(),
        settings.steps(),
        settings.seeds(),
        settings.demandPercents(),
        settings.again(),
        settings.oneMore());
  }
}
