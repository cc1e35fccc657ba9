package rigmorrow.model.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.SetupAttribute;
import rigmorrow.model.work.ChangeoverModel;

/** Changeovers that take another time. */
final class ChangeoverChanges {
  private ChangeoverChanges() {}

  /** The same line for other rigs and with another hands-on time. */
  static ChangeoverRule of(ChangeoverRule rule, Set<String> rigs, int attendedSeconds) {
    return new ChangeoverRule(
        rule.attribute(),
        rule.from(),
        rule.to(),
        rigs,
        attendedSeconds,
        rule.unattendedSeconds(),
        rule.people(),
        rule.skills(),
        rule.step());
  }

  static void times(FloorChange.ChangeoverTimes change, FloorDraft draft) {
    List<String> attributes = draft.before().attributes().stream().map(SetupAttribute::id).toList();
    Optional<SetupAttribute> attribute = draft.before().attribute(change.attribute());
    List<Integer> rigs = draft.rigs(change.rigs());
    if (attribute.isEmpty()) {
      draft.refuse("attribute", change.attribute(), "setup attributes", attributes);
      return;
    }
    List<String> values = attribute.get().values().stream().map(AttributeValue::id).toList();
    boolean known = known("from", change.from(), values, draft);
    known &= known("to", change.to(), values, draft);
    if (!known || (rigs.isEmpty() && !change.rigs().isEmpty())) {
      return;
    }
    List<Rig> concerned =
        change.rigs().isEmpty() ? draft.rigs : rigs.stream().map(draft.rigs::get).toList();
    if (change.rigs().isEmpty() && change.from() == null && change.to() == null) {
      draft.changeovers.replaceAll(
          rule ->
              rule.attribute().equals(change.attribute())
                  ? of(rule, rule.rigs(), then(rule.attendedSeconds(), change))
                  : rule);
      return;
    }
    ChangeoverModel now = new ChangeoverModel(draft.floor());
    List<ChangeoverRule> lines = new ArrayList<>();
    for (Rig rig : concerned) {
      for (String from : values) {
        for (String to : values) {
          if (concerns(change, from, to) && offered(rig, change.attribute(), from, to)) {
            now.rule(rig, change.attribute(), from, to)
                .ifPresent(rule -> lines.add(line(rule, rig.id(), from, to, change)));
          }
        }
      }
    }
    // Of lines that are equally specific the first counts.
    draft.changeovers.addAll(0, lines);
  }

  private static boolean known(
      String field, @Nullable String value, List<String> values, FloorDraft draft) {
    if (value == null || values.contains(value)) {
      return true;
    }
    draft.refuse(field, value, "values of the attribute", values);
    return false;
  }

  private static boolean concerns(FloorChange.ChangeoverTimes change, String from, String to) {
    return !from.equals(to)
        && (change.from() == null || change.from().equals(from))
        && (change.to() == null || change.to().equals(to));
  }

  private static boolean offered(Rig rig, String attribute, String from, String to) {
    return rig.offers(attribute, from) && rig.offers(attribute, to);
  }

  /** A line for one rig and one pair of values, made of the line that counts for them now. */
  private static ChangeoverRule line(
      ChangeoverRule rule, String rig, String from, String to, FloorChange.ChangeoverTimes change) {
    return new ChangeoverRule(
        rule.attribute(),
        from,
        to,
        Set.of(rig),
        then(rule.attendedSeconds(), change),
        rule.unattendedSeconds(),
        rule.people(),
        rule.skills(),
        rule.step());
  }

  private static int then(int now, FloorChange.ChangeoverTimes change) {
    Integer seconds = change.seconds();
    Double factor = change.factor();
    return seconds != null
        ? seconds
        : (int) Math.min(Integer.MAX_VALUE, Math.round(now * (factor == null ? 1 : factor)));
  }
}
