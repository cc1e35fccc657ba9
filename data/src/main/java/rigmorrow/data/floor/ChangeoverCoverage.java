package rigmorrow.data.floor;

import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rigmorrow.data.problem.Problems;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.SetupAttribute;

/**
 * Finds changes of setup that a rig can come to need and no changeover line tells the time of. Each
 * line is looked at once, so that tables with a line for every pair of values on every rig are
 * fine.
 */
final class ChangeoverCoverage {
  private final String attribute;
  private final List<String> values;
  private final Map<String, Integer> indexes = new HashMap<>();

  /** By rig, for each origin: the targets that the rig may go to and no line covers. */
  private final Map<String, BitSet[]> openByRig;

  private ChangeoverCoverage(SetupAttribute attribute, List<Rig> rigs) {
    this.attribute = attribute.id();
    this.values = attribute.values().stream().map(AttributeValue::id).toList();
    for (String value : values) {
      indexes.put(value, indexes.size());
    }
    this.openByRig = new LinkedHashMap<>();
    rigs.forEach(rig -> openByRig.put(rig.id(), needed(rig)));
  }

  static void check(
      List<SetupAttribute> attributes,
      List<ChangeoverRule> rules,
      List<Rig> rigs,
      Problems problems) {
    Map<String, List<ChangeoverRule>> rulesByAttribute =
        rules.stream().collect(Collectors.groupingBy(ChangeoverRule::attribute));
    for (SetupAttribute attribute : attributes) {
      ChangeoverCoverage coverage = new ChangeoverCoverage(attribute, rigs);
      rulesByAttribute.getOrDefault(attribute.id(), List.of()).forEach(coverage::cover);
      coverage.tell(problems);
    }
  }

  /** Every change between two values that a rig offers. */
  private BitSet[] needed(Rig rig) {
    BitSet offered = new BitSet();
    IntStream.range(0, values.size())
        .filter(value -> rig.offers(attribute, values.get(value)))
        .forEach(offered::set);
    BitSet[] needed = new BitSet[values.size()];
    for (int from = 0; from < needed.length; from++) {
      needed[from] = offered.get(from) ? (BitSet) offered.clone() : new BitSet();
      needed[from].clear(from);
    }
    return needed;
  }

  private void cover(ChangeoverRule rule) {
    if (rule.rigs().isEmpty()) {
      openByRig.values().forEach(open -> cover(rule, open));
      return;
    }
    for (String rig : rule.rigs()) {
      BitSet[] open = openByRig.get(rig);
      if (open != null) {
        cover(rule, open);
      }
    }
  }

  private void cover(ChangeoverRule rule, BitSet[] open) {
    Integer from = indexes.get(rule.from());
    if (from != null) {
      cover(rule.to(), open[from]);
    } else if (rule.from().equals(ChangeoverRule.ANY)) {
      for (BitSet targets : open) {
        cover(rule.to(), targets);
      }
    }
  }

  private void cover(String to, BitSet targets) {
    Integer target = indexes.get(to);
    if (target != null) {
      targets.clear(target);
    } else if (to.equals(ChangeoverRule.ANY)) {
      targets.clear();
    }
  }

  private void tell(Problems problems) {
    for (int from = 0; from < values.size(); from++) {
      BitSet targets = new BitSet();
      for (BitSet[] open : openByRig.values()) {
        targets.or(open[from]);
      }
      for (int to = targets.nextSetBit(0); to >= 0; to = targets.nextSetBit(to + 1)) {
        problems.add("changeovers", "", "", missing(from, to));
      }
    }
  }

  private String missing(int from, int to) {
    String without =
        openByRig.entrySet().stream()
            .filter(open -> open.getValue()[from].get(to))
            .map(Map.Entry::getKey)
            .collect(Collectors.joining(", "));
    return "a line for %s from %s to %s on %s (from * to * covers all)"
        .formatted(attribute, values.get(from), values.get(to), without);
  }
}
