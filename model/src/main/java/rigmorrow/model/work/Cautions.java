package rigmorrow.model.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.lifting.LiftAdvice;
import rigmorrow.model.lifting.LiftCrew;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Hanging;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.Power;

/** What the crew must mind with one job on one rig. Advice that gives way to local rules. */
final class Cautions {
  private Cautions() {}

  /**
   * @param kits ids of what it needs
   * @param people who are planned to place it
   */
  static List<String> of(
      Floor floor,
      Rig rig,
      Item item,
      Setup request,
      List<String> kits,
      LiftAdvice lift,
      int people) {
    List<String> cautions = new ArrayList<>();
    if (!LiftCheck.light(item) && lift.crew() != LiftCrew.ONE_PERSON) {
      cautions.add(heavy(lift));
    }
    if (item.handsNeeded() > people) {
      cautions.add(fewer(item.handsNeeded(), people));
    }
    if (item.glass()) {
      cautions.add("Glass: check for cracks, wear cut-resistant gloves, clear the turning circle.");
    }
    tipping(item).ifPresent(cautions::add);
    Hanging hanging = item.hanging();
    if (hanging != null) {
      cautions.add(
          text(
              "Hanging load of %.1f kg: check strings and hooks, keep out from under it, let the"
                  + " swing die down.",
              hanging.hangingMassKg()));
    }
    Power power = item.power();
    if (power != null) {
      cautions.add(
          text(
              "Mains on a turning head (%d V, %d W): qualified person only, check cable and plug,"
                  + " switch off before touching.",
              power.volts(), power.watts()));
    }
    if (item.estimated()) {
      cautions.add("Size or mass is an estimate: measure and weigh before placing it.");
    }
    cautions.add("Moving arm and turning plate: stay clear until they have stopped.");
    request
        .values()
        .forEach(
            (attribute, value) ->
                floor
                    .attribute(attribute)
                    .flatMap(known -> known.value(value))
                    .map(AttributeValue::caution)
                    .ifPresent(cautions::add));
    for (String kit : kits) {
      floor.kit(kit).map(Kit::caution).ifPresent(cautions::add);
    }
    cautions.addAll(rig.cautions());
    return List.copyOf(cautions);
  }

  /** Only of an offset that was given: the floor's own says how well things are placed. */
  private static Optional<String> tipping(Item item) {
    Integer offset = item.offsetMm();
    if (offset == null || item.hangsFree() || item.holder()) {
      return Optional.empty();
    }
    ItemGeometry geometry = ItemGeometry.of(item);
    return geometry.mayTipAt(offset)
        ? Optional.of(
            text(
                "May tip: centre of mass %d mm off the plate's centre; placed in the middle, its base"
                    + " reaches out only %s mm. Secure it against tipping before you let go, and do"
                    + " not turn it until it is; local rules come first.",
                offset, half(geometry.halfBaseMm())))
        : Optional.empty();
  }

  /** Half of a whole number. */
  private static String half(double millimetres) {
    return millimetres == Math.rint(millimetres)
        ? text("%.0f", millimetres)
        : text("%.1f", millimetres);
  }

  /** Whether a holder does the work of a hand, only who knows both can tell. */
  private static String fewer(int listed, int people) {
    return text(
        "Needs %d people by the list; %d %s planned, since its holder counts as one. Call another"
            + " before you start, unless the holder does that work.",
        listed, people, people == 1 ? "is" : "are");
  }

  private static String heavy(LiftAdvice lift) {
    String who =
        lift.crew() == LiftCrew.TWO_PEOPLE
            ? "lift with two people"
            : "two people and a lifting aid";
    return text(
        "Heavy: %.1f kg, recommended limit for one person here %.1f kg (NIOSH 94-110): %s.",
        lift.onePerson().loadKg(), lift.onePerson().recommendedWeightLimitKg(), who);
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
