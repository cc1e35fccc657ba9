package rigmorrow.data.demo;

import java.util.List;
import java.util.Map;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.money.Investment;
import rigmorrow.model.money.MoneyTerms;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.scenario.Study;

/** What the manager of the demo studio asks. Every price is invented. */
public final class DemoScenarios {
  /** What money costs the demo studio in a year. */
  public static final double INTEREST_PERCENT = 6;

  private static final List<String> RIGS = List.of("R1", "R2", "R3", "R4", "R5", "R6");

  private DemoScenarios() {}

  /** Four scenarios for the floor of six rigs, and prices for small changes. */
  public static Study study() {
    return new Study(
        "Lindholm Hall: what to buy next",
        new MoneyTerms(250, CrewPay.SHIFT),
        List.of(turntable(), operator(), fixture(), longerShift()),
        prices(),
        List.of(
            "Lindholm Hall, its past days and all prices are invented; no price is a quotation."));
  }

  private static Scenario turntable() {
    return new Scenario(
        "turntable",
        "Another glass table",
        List.of(new FloorChange.RigLike("R2", "R7", "Second glass table")),
        bought(42_000, 8, 1800));
  }

  private static Scenario operator() {
    return new Scenario(
        "operator",
        "One more operator on the early shift",
        List.of(new FloorChange.OperatorLike("O1", "O5", "Freja")),
        null);
  }

  private static Scenario fixture() {
    return new Scenario(
        "fixture",
        "A quick-change fixture for backgrounds",
        List.of(new FloorChange.ChangeoverTimes("background", List.of(), null, null, null, 0.35)),
        bought(9500, 5, 300));
  }

  private static Scenario longerShift() {
    return new Scenario(
        "longer-shift",
        "The late shift and the rigs an hour longer",
        List.of(new FloorChange.LongerHours(RIGS, List.of("O3", "O4"), 0, 60, false)),
        null);
  }

  private static Study.Prices prices() {
    return new Study.Prices(
        Map.of(
            "R1", bought(28_000, 8, 1200),
            "R2", bought(42_000, 8, 1800),
            "R3", bought(55_000, 8, 2100),
            "R4", bought(88_000, 10, 3600),
            "R5", bought(47_000, 8, 1900),
            "R6", bought(51_000, 8, 2200)),
        Map.of(
            DemoKit.ROTATOR_HEAD, bought(6800, 6, 150),
            DemoKit.POWERED_HEAD, bought(4900, 6, 120),
            DemoKit.MACRO_LENS, bought(1900, 6, 0),
            DemoKit.DOCKING_ARM, bought(8200, 8, 200),
            DemoKit.HOLDER, bought(350, 5, 0),
            DemoKit.LIFTING_AID, bought(2600, 10, 100)));
  }

  private static Investment bought(double price, int lifeYears, double runningPerYear) {
    return new Investment(price, lifeYears, INTEREST_PERCENT, runningPerYear);
  }
}
