package rigmorrow.model.change;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.scenario.FloorChange;

/** Hours of rigs and operators that are longer, or come a second time. */
final class HourChanges {
  private static final int MINUTES_PER_DAY = 24 * 60;

  private HourChanges() {}

  static void longer(FloorChange.LongerHours change, FloorDraft draft) {
    for (int index : draft.rigs(change.rigs())) {
      Rig rig = draft.rigs.get(index);
      List<OpenHours> open = longer(rig.open(), change);
      if (open == null) {
        draft.refuse("rigs", rig.id(), "hours that stay below a day");
      } else {
        draft.rigs.set(index, RigCopy.open(rig, open));
      }
    }
    for (int index : draft.operators(change.operators())) {
      Operator one = draft.crew.get(index);
      if (longer(one.shifts(), change) == null) {
        draft.refuse("operators", one.id(), "hours that stay below a day");
      } else {
        UnaryOperator<List<OpenHours>> more =
            shifts -> {
              List<OpenHours> later = longer(shifts, change);
              return later == null ? shifts : later;
            };
        draft.shifts(index, more, change.regularTime());
      }
    }
  }

  /** Each span of hours made longer; null where one would be a day or more. */
  private static @Nullable List<OpenHours> longer(
      List<OpenHours> hours, FloorChange.LongerHours change) {
    List<OpenHours> longer = new ArrayList<>();
    for (OpenHours one : hours) {
      int length = Math.floorMod(minutes(one.to()) - minutes(one.from()), MINUTES_PER_DAY);
      if (length == 0
          || length + change.earlierMinutes() + change.laterMinutes() >= MINUTES_PER_DAY) {
        return null;
      }
      longer.addAll(longer(one, change.earlierMinutes(), change.laterMinutes()));
    }
    return longer;
  }

  /**
   * What begins before midnight belongs to the day before, so hours that are moved there become two
   * spans.
   */
  private static List<OpenHours> longer(OpenHours one, int earlier, int later) {
    LocalTime from = one.from().minusMinutes(earlier);
    LocalTime to = one.to().plusMinutes(later);
    if (!from.isAfter(one.from())) {
      return List.of(new OpenHours(one.days(), from, to));
    }
    Set<DayOfWeek> before =
        one.days().stream().map(day -> day.minus(1)).collect(Collectors.toSet());
    return List.of(
        new OpenHours(before, from, LocalTime.MIDNIGHT),
        new OpenHours(one.days(), LocalTime.MIDNIGHT, to));
  }

  private static int minutes(LocalTime time) {
    return time.toSecondOfDay() / 60;
  }

  static void second(FloorChange.SecondShift change, FloorDraft draft) {
    for (int index : draft.rigs(change.rigs())) {
      Rig rig = draft.rigs.get(index);
      List<OpenHours> open = new ArrayList<>(rig.open());
      open.add(change.hours());
      draft.rigs.set(index, RigCopy.open(rig, open));
    }
    CrewChanges.addForShift(
        draft.operators(change.operators()), change.hours(), change.breaks(), draft);
  }
}
