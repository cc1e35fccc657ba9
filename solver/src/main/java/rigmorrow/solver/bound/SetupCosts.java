package rigmorrow.solver.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.setup.SetupAttribute;
import rigmorrow.model.work.ChangeoverModel;
import rigmorrow.solver.timeline.BatchFacts;

/**
 * The least hands-on seconds between two setups that follow each other on a rig.
 *
 * <p>What a setup leaves open may be set to anything, so also to what comes next: it counts as no
 * step. Any real changeover has all the steps counted here, in the same order, and perhaps others
 * between them. Where one operator does them they add up. Where two share them, each goes to the
 * hand that is free first: let the hands' seconds be a &lt;= b without a further step and a' &lt;=
 * b' with it, then a &lt;= a' and b &lt;= b', and the same holds after every later step; so further
 * steps never make the whole shorter.
 */
final class SetupCosts {
  /** Stands for a value that a setup leaves open. */
  private static final int OPEN = -1;

  private static final int UNKNOWN = -1;

  /**
   * So many changes are looked up in the tables; further ones count nothing, which is below all.
   */
  private static final int MOST_LOOKED_UP = 300_000;

  private final Floor floor;
  private final ChangeoverModel model;
  private final List<Map<String, Integer>> numbers = new ArrayList<>();
  private final boolean[] share;

  /** By rig and attribute, for value before times values plus value after. */
  private final int[][][] seconds;

  private final boolean[][][] forTwo;
  private int lookedUp;

  SetupCosts(BatchFacts facts) {
    this.floor = facts.floor();
    this.model = new ChangeoverModel(floor);
    for (SetupAttribute attribute : floor.attributes()) {
      Map<String, Integer> values = new HashMap<>();
      attribute.values().forEach(value -> values.put(value.id(), values.size()));
      numbers.add(values);
    }
    int rigs = floor.rigs().size();
    this.share = new boolean[rigs];
    this.seconds = new int[rigs][numbers.size()][];
    this.forTwo = new boolean[rigs][numbers.size()][];
    for (int rig = 0; rig < rigs; rig++) {
      share[rig] = facts.twoStepsAtOnce(rig);
      int alike = alike(rig);
      if (alike < rig) {
        seconds[rig] = seconds[alike];
        forTwo[rig] = forTwo[alike];
        continue;
      }
      for (int i = 0; i < numbers.size(); i++) {
        int values = numbers.get(i).size();
        seconds[rig][i] = new int[values * values];
        Arrays.fill(seconds[rig][i], UNKNOWN);
        forTwo[rig][i] = new boolean[values * values];
      }
    }
  }

  /** The first rig whose steps take as long: no line of the tables names either. */
  private int alike(int rig) {
    for (int other = 0; other < rig; other++) {
      if (!named(other)
          && !named(rig)
          && floor.rigs().get(other).changeoverFactor()
              == floor.rigs().get(rig).changeoverFactor()) {
        return other;
      }
    }
    return rig;
  }

  private boolean named(int rig) {
    String id = floor.rigs().get(rig).id();
    return floor.changeovers().stream().anyMatch(rule -> rule.rigs().contains(id));
  }

  /** A setup as numbers of values, in the floor's attribute order. */
  int[] values(Setup setup) {
    int[] values = new int[numbers.size()];
    for (int i = 0; i < values.length; i++) {
      String value = setup.value(floor.attributes().get(i).id());
      values[i] = value == null ? OPEN : numbers.get(i).getOrDefault(value, OPEN);
    }
    return values;
  }

  /** The least hands-on seconds from one setup to another on a rig. */
  int seconds(int rig, int[] from, int[] to) {
    int first = 0;
    int second = 0;
    for (int i = 0; i < to.length; i++) {
      if (to[i] == OPEN || from[i] == OPEN || to[i] == from[i]) {
        continue;
      }
      int at = from[i] * numbers.get(i).size() + to[i];
      int step = seconds[rig][i][at];
      if (step == UNKNOWN) {
        step = look(rig, i, from[i], to[i]);
      }
      if (!share[rig]) {
        first += step;
      } else if (forTwo[rig][i][at]) {
        first = Math.max(first, second) + step;
        second = first;
      } else if (second < first) {
        second += step;
      } else {
        first += step;
      }
    }
    return Math.max(first, second);
  }

  private int look(int rig, int attribute, int from, int to) {
    String id = floor.attributes().get(attribute).id();
    String before = floor.attributes().get(attribute).values().get(from).id();
    String after = floor.attributes().get(attribute).values().get(to).id();
    int at = from * numbers.get(attribute).size() + to;
    seconds[rig][attribute][at] = 0;
    // A change without a line in the tables is met by no plan.
    if (++lookedUp <= MOST_LOOKED_UP
        && model.rule(floor.rigs().get(rig), id, before, after).isPresent()) {
      Setup request = new Setup(Map.of(id, after));
      ChangeoverStep step =
          model.steps(floor.rigs().get(rig), new Setup(Map.of(id, before)), request).get(0);
      seconds[rig][attribute][at] = step.attendedSeconds();
      forTwo[rig][attribute][at] = step.people() == 2;
    }
    return seconds[rig][attribute][at];
  }
}
