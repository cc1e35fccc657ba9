package rigmorrow.model.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.money.Investment;

/** Every small change to a floor: one more of each thing. */
public final class SmallChanges {
  /** What the names of all of them begin with, and no other name may. */
  static final String PREFIX = "one-more:";

  private SmallChanges() {}

  /**
   * One scenario for each: a rig like each, an operator like each, a piece of each kit.
   *
   * @param prices what they cost; a thing without a price is compared too, but not by money
   */
  public static List<Scenario> of(Floor floor, Study.Prices prices) {
    List<Scenario> all = new ArrayList<>();
    floor.rigs().forEach(rig -> all.add(rig(floor, rig, prices.rigs().get(rig.id()))));
    floor.crew().forEach(one -> all.add(operator(floor, one)));
    floor.kits().forEach(kit -> all.add(unit(kit, prices.kits().get(kit.id()))));
    return distinct(all);
  }

  /** A rig, an operator and a kit may have one id; the later ones get a number then. */
  private static List<Scenario> distinct(List<Scenario> all) {
    Set<String> taken = all.stream().map(Scenario::name).collect(Collectors.toSet());
    Set<String> seen = new HashSet<>();
    List<Scenario> distinct = new ArrayList<>();
    for (Scenario one : all) {
      String name = seen.contains(one.name()) ? free(one.name(), taken) : one.name();
      seen.add(name);
      taken.add(name);
      distinct.add(new Scenario(name, one.title(), one.changes(), one.purchase()));
    }
    return distinct;
  }

  /**
   * One more rig.
   *
   * @param like the rig of the floor that it is like
   * @param price null where nobody said it
   */
  public static Scenario rig(Floor floor, Rig like, @Nullable Investment price) {
    Set<String> taken = floor.rigs().stream().map(Rig::id).collect(Collectors.toSet());
    return new Scenario(
        PREFIX + like.id(),
        "One more rig like " + named(like.id(), like.name()),
        List.of(
            new FloorChange.RigLike(
                like.id(), free(like.id(), taken), like.name() + " (one more)")),
        price);
  }

  /**
   * One more operator.
   *
   * @param like the operator of the floor that they are like
   */
  public static Scenario operator(Floor floor, Operator like) {
    Set<String> taken = floor.crew().stream().map(Operator::id).collect(Collectors.toSet());
    return new Scenario(
        PREFIX + like.id(),
        "One more operator like " + named(like.id(), like.name()),
        List.of(
            new FloorChange.OperatorLike(
                like.id(), free(like.id(), taken), like.name() + " (one more)")),
        null);
  }

  /**
   * One more piece of a kit.
   *
   * @param price null where nobody said it
   */
  public static Scenario unit(Kit kit, @Nullable Investment price) {
    return new Scenario(
        PREFIX + kit.id(),
        "One more " + named(kit.id(), kit.label()),
        List.of(new FloorChange.MoreUnits(kit.id(), 1, null)),
        price);
  }

  /** A thing by its id and what people call it, once where both are the same. */
  public static String named(String id, String name) {
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
