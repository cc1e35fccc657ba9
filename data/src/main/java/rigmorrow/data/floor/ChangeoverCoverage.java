package rigmorrow.data.floor;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.data.problem.Problems;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.SetupAttribute;

/** Finds changes of setup that a rig can come to need and no changeover line tells the time of. */
final class ChangeoverCoverage {
  private ChangeoverCoverage() {}

  static void check(
      List<SetupAttribute> attributes,
      List<ChangeoverRule> rules,
      List<Rig> rigs,
      Problems problems) {
    for (SetupAttribute attribute : attributes) {
      List<ChangeoverRule> lines =
          rules.stream().filter(rule -> rule.attribute().equals(attribute.id())).toList();
      for (AttributeValue from : attribute.values()) {
        for (AttributeValue to : attribute.values()) {
          if (!from.id().equals(to.id())) {
            pair(attribute.id(), from.id(), to.id(), lines, rigs, problems);
          }
        }
      }
    }
  }

  private static void pair(
      String attribute,
      String from,
      String to,
      List<ChangeoverRule> lines,
      List<Rig> rigs,
      Problems problems) {
    List<String> without = new ArrayList<>();
    for (Rig rig : rigs) {
      boolean needed = rig.offers(attribute, from) && rig.offers(attribute, to);
      if (needed && lines.stream().noneMatch(line -> line.applies(rig.id(), from, to))) {
        without.add(rig.id());
      }
    }
    if (!without.isEmpty()) {
      problems.add(
          "changeovers",
          "",
          "",
          "a line for "
              + attribute
              + " from "
              + from
              + " to "
              + to
              + " on "
              + String.join(", ", without)
              + " (from * to * covers all)");
    }
  }
}
