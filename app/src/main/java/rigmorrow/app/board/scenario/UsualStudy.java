package rigmorrow.app.board.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.whatif.FigureText;
import rigmorrow.model.check.Require;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.money.Investment;
import rigmorrow.model.money.MoneyTerms;
import rigmorrow.model.scenario.DemandChange;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.scenario.ScenarioChange;
import rigmorrow.model.scenario.SmallChanges;
import rigmorrow.model.scenario.Study;

/** Puts a usual change into scenarios, as somebody would write it into their file. */
final class UsualStudy {
  /** In a year, for purchases in scenarios that begin without one; the form offers the same. */
  static final double INTEREST_PERCENT = 5;

  /** What a file means that does not say it (data/FORMAT.md). */
  private static final int WORKING_DAYS = 250;

  private static final Study EMPTY =
      new Study(
          "Scenarios made on the board",
          new MoneyTerms(WORKING_DAYS, CrewPay.SHIFT),
          List.of(),
          Study.Prices.NONE);

  private final Floor floor;
  private final Study before;

  /**
   * @param floor of the first day
   * @param before null to begin with nothing
   */
  UsualStudy(Floor floor, @Nullable Study before) {
    this.floor = floor;
    this.before = before == null ? EMPTY : before;
  }

  /**
   * The scenarios with one more.
   *
   * @param purchase what has to be bought for it; null for nothing
   * @throws IllegalArgumentException when it names what the floor does not have, or a number is
   *     outside its bounds
   */
  Study with(UsualChange change, @Nullable Investment purchase) {
    List<Scenario> scenarios = new ArrayList<>(before.scenarios());
    scenarios.add(scenario(change, purchase));
    return with(scenarios);
  }

  /**
   * The scenarios without one.
   *
   * @throws IllegalArgumentException when there is none of that name
   */
  Study without(String name) {
    List<Scenario> scenarios = new ArrayList<>(before.scenarios());
    if (!scenarios.removeIf(scenario -> scenario.name().equals(name))) {
      throw new IllegalArgumentException("There is no scenario '" + name + "'.");
    }
    return with(scenarios);
  }

  /** The list of prices stays as it was read: what one scenario costs says nothing of others. */
  private Study with(List<Scenario> scenarios) {
    return new Study(
        before.name(), before.terms(), scenarios, before.prices(), before.assumptions());
  }

  private Scenario scenario(UsualChange change, @Nullable Investment purchase) {
    if (change instanceof UsualChange.AnotherRig more) {
      Rig rig = find("rig", floor.rigs(), Rig::id, more.rig());
      return named("another-" + rig.id(), SmallChanges.rig(floor, rig, purchase));
    }
    if (change instanceof UsualChange.WithoutRig less) {
      Rig rig = find("rig", floor.rigs(), Rig::id, less.rig());
      return made(
          "without-" + rig.id(),
          "Without " + SmallChanges.named(rig.id(), rig.name()),
          new FloorChange.RigGone(rig.id()),
          purchase);
    }
    if (change instanceof UsualChange.AnotherOperator more) {
      Operator one = find("operator", floor.crew(), Operator::id, more.operator());
      Scenario scenario = SmallChanges.operator(floor, one);
      return made("another-" + one.id(), scenario.title(), scenario.changes().get(0), purchase);
    }
    if (change instanceof UsualChange.AnotherUnit more) {
      Kit kit = find("kit", floor.kits(), Kit::id, more.kit());
      return named("another-" + kit.id(), SmallChanges.unit(kit, purchase));
    }
    if (change instanceof UsualChange.OtherDemand other) {
      return demand(other.percent(), purchase);
    }
    return longer((UsualChange.OpenLonger) change, purchase);
  }

  private Scenario demand(double percent, @Nullable Investment purchase) {
    String size = FigureText.percent(Math.abs(percent));
    Require.that(percent != 0, "percent", "0", "more or fewer jobs than there were");
    boolean more = percent > 0;
    return made(
        (more ? "more-" : "fewer-") + size.replace(" %", ""),
        size + " " + (more ? "more" : "fewer") + " jobs",
        new DemandChange.MoreJobs(percent, 1),
        purchase);
  }

  private Scenario longer(UsualChange.OpenLonger longer, @Nullable Investment purchase) {
    List<String> when = new ArrayList<>();
    if (longer.earlierMinutes() > 0) {
      when.add(longer.earlierMinutes() + " min earlier");
    }
    if (longer.laterMinutes() > 0) {
      when.add(longer.laterMinutes() + " min later");
    }
    return made(
        "longer",
        "Every rig and operator " + String.join(" and ", when),
        new FloorChange.LongerHours(
            floor.rigs().stream().map(Rig::id).toList(),
            floor.crew().stream().map(Operator::id).toList(),
            longer.earlierMinutes(),
            longer.laterMinutes(),
            longer.regularTime()),
        purchase);
  }

  private Scenario made(
      String name, String title, ScenarioChange change, @Nullable Investment purchase) {
    return named(name, new Scenario(name, title, List.of(change), purchase));
  }

  /** The same under a name that no other scenario has. */
  private Scenario named(String name, Scenario scenario) {
    Set<String> taken = before.scenarios().stream().map(Scenario::name).collect(Collectors.toSet());
    String free = name;
    for (int number = 2; taken.contains(free); number++) {
      free = name + "." + number;
    }
    return new Scenario(free, scenario.title(), scenario.changes(), scenario.purchase());
  }

  private static <T> T find(String kind, List<T> all, Function<T, String> id, String asked) {
    Optional<T> found = all.stream().filter(one -> id.apply(one).equals(asked)).findFirst();
    return found.orElseThrow(
        () ->
            new IllegalArgumentException(
                kind
                    + " is '"
                    + asked
                    + "'; accepted: "
                    + all.stream().map(id).collect(Collectors.joining(", "))));
  }
}
