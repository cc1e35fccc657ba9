package rigmorrow.model.comparison;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import rigmorrow.model.check.Require;
import rigmorrow.model.statistic.Bootstrap;
import rigmorrow.model.statistic.Interval;

/**
 * How a figure of a scenario differs from that of the floor as it is.
 *
 * @param figure what is compared
 * @param pairs one for each batch that both have, at least one
 * @param base mean of the floor as it is
 * @param scenario mean of the scenario
 * @param difference how much more the scenario has, with its interval over batches
 */
public record Difference(
    Figure figure, List<Pair> pairs, double base, double scenario, Interval difference) {
  public Difference {
    pairs = List.copyOf(pairs);
  }

  /** The difference over some pairs. */
  static Difference of(Figure figure, List<Pair> pairs) {
    Require.that(!pairs.isEmpty(), "pairs", "empty", "at least one");
    return new Difference(
        figure,
        pairs,
        mean(pairs, Pair::base),
        mean(pairs, Pair::scenario),
        Bootstrap.mean(pairs.stream().mapToDouble(Pair::difference).toArray()));
  }

  /** True where no batch differs at all. */
  public boolean same() {
    return pairs.stream().allMatch(pair -> pair.difference() == 0);
  }

  /** True where so few batches cannot tell whether there is more or less. */
  public boolean unsure() {
    return difference.count() < 2 || difference.holdsZero();
  }

  private static double mean(List<Pair> pairs, ToDoubleFunction<Pair> side) {
    OptionalDouble mean = pairs.stream().mapToDouble(side).average();
    return mean.orElse(0);
  }
}
