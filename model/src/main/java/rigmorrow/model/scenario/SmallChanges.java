package rigmorrow.model.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;

/** Every small change to a floor: one more of each thing. */
public final class SmallChanges {
  private static final String PREFIX = "one-more:";

  private SmallChanges() {}

  /**
   * One scenario for each: a rig like each, an operator like each, a piece of each kit.
   *
   * @param prices what they cost; a thing without a price is compared too, but not by money
   */
  public static List<Scenario> of(Floor floor, Study.Prices prices) {
    List<Scenario> all = new ArrayList<>();
    Set<String> rigs = floor.rigs().stream().map(Rig::id).collect(Collectors.toSet());
    for (Rig rig : floor.rigs()) {
      String name = rig.name() + " (one more)";
      all.add(
          new Scenario(
              PREFIX + rig.id(),
              "One more rig like " + named(rig.id(), rig.name()),
              List.of(new FloorChange.RigLike(rig.id(), free(rig.id(), rigs), name)),
              prices.rigs().get(rig.id())));
    }
    Set<String> crew = floor.crew().stream().map(Operator::id).collect(Collectors.toSet());
    for (Operator one : floor.crew()) {
      String name = one.name() + " (one more)";
      all.add(
          new Scenario(
              PREFIX + one.id(),
              "One more operator like " + named(one.id(), one.name()),
              List.of(new FloorChange.OperatorLike(one.id(), free(one.id(), crew), name)),
              null));
    }
    for (Kit kit : floor.kits()) {
      all.add(
          new Scenario(
              PREFIX + kit.id(),
              "One more " + named(kit.id(), kit.label()),
              List.of(new FloorChange.MoreUnits(kit.id(), 1, null)),
              prices.kits().get(kit.id())));
    }
    return all;
  }

  private static String named(String id, String name) {
    return name.equals(id) ? id : id + " (" + name + ")";
  }

  private static String free(String id, Set<String> taken) {
    int number = 2;
    while (taken.contains(id + "." + number)) {
      number++;
    }
    return id + "." + number;
  }
}
