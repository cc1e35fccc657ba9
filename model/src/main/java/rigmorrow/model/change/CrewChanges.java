package rigmorrow.model.change;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.scenario.FloorChange;

/** Operators who come or learn. */
final class CrewChanges {
  private static final int MOST_OPERATORS = 31;

  private CrewChanges() {}

  static void addLike(FloorChange.OperatorLike change, FloorDraft draft) {
    int like = draft.operator("like", change.like());
    if (taken(change.id(), draft)) {
      draft.refuse("id", change.id(), "an id that no operator has");
      return;
    }
    if (like >= 0 && room("id", change.id(), draft)) {
      Operator model = draft.crew.get(like);
      draft.crew.add(
          new Operator(
              change.id(),
              change.name(),
              model.skills(),
              model.shifts(),
              model.breaks(),
              List.of()));
    }
  }

  /** For each of some operators somebody with the same skills and other hours. */
  static void addForShift(
      List<Integer> likes, OpenHours hours, List<OpenHours> breaks, FloorDraft draft) {
    for (int like : likes) {
      Operator model = draft.crew.get(like);
      if (room("operators", model.id(), draft)) {
        String id = model.id() + "-2";
        while (taken(id, draft)) {
          id += "'";
        }
        draft.crew.add(
            new Operator(
                id,
                model.name() + " (second shift)",
                model.skills(),
                List.of(hours),
                breaks,
                List.of()));
      }
    }
  }

  static void teach(FloorChange.MoreSkills change, FloorDraft draft) {
    int index = draft.operator("operator", change.operator());
    Set<String> known = new TreeSet<>(draft.skillsAskedFor());
    Set<String> fresh = new TreeSet<>(change.skills());
    for (String skill : fresh) {
      if (!known.contains(skill)) {
        draft.refuse("skills", skill, "skills that the floor asks for", new ArrayList<>(known));
      }
    }
    fresh.retainAll(known);
    if (index < 0) {
      return;
    }
    Operator one = draft.crew.get(index);
    for (String skill : fresh) {
      if (one.skills().contains(skill)) {
        draft.refuse("skills", skill, "a skill that " + one.id() + " does not have");
      }
    }
    Set<String> skills = new HashSet<>(one.skills());
    skills.addAll(fresh);
    draft.crew.set(index, FloorDraft.with(one, skills, one.shifts()));
  }

  private static boolean taken(String id, FloorDraft draft) {
    return draft.crew.stream().anyMatch(operator -> operator.id().equals(id));
  }

  private static boolean room(String field, String value, FloorDraft draft) {
    if (draft.crew.size() < MOST_OPERATORS) {
      return true;
    }
    draft.refuse(field, value, "at most " + MOST_OPERATORS + " operators");
    return false;
  }
}
