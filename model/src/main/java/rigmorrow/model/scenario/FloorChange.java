package rigmorrow.model.scenario;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.check.Require;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Rig;

/** Something about the floor that is otherwise. Lists of rigs and operators are ids. */
public sealed interface FloorChange extends ScenarioChange {

  /**
   * One more rig like another: with what is fitted, its hours, its changeover and capture times and
   * the walking times to it. It has no dated closures, and its plate ring is new.
   *
   * @param like id of the rig it is like
   * @param id of the new rig
   * @param name what people call it
   */
  record RigLike(String like, String id, String name) implements FloorChange {
    public RigLike {
      Require.text("addRigLike.like", like);
      Require.text("addRigLike.id", id);
      Require.text("addRigLike.name", name);
    }
  }

  /** One more rig. */
  record NewRig(Rig rig) implements FloorChange {}

  /**
   * One rig less. Kit that lies on it stays where it lies, as on a shelf; jobs that were pinned to
   * it and have not begun are free.
   *
   * @param rig id
   */
  record RigGone(String rig) implements FloorChange {
    public RigGone {
      Require.text("removeRig.rig", rig);
    }
  }

  /**
   * One more operator with the skills and hours of another, but none of their dated absences.
   *
   * @param like id of the operator they are like
   * @param id of the new operator
   * @param name what the run sheet shows
   */
  record OperatorLike(String like, String id, String name) implements FloorChange {
    public OperatorLike {
      Require.text("addOperatorLike.like", like);
      Require.text("addOperatorLike.id", id);
      Require.text("addOperatorLike.name", name);
    }
  }

  /**
   * An operator learns something.
   *
   * @param operator id
   * @param skills at least one
   */
  record MoreSkills(String operator, Set<String> skills) implements FloorChange {
    public MoreSkills {
      Require.text("addSkills.operator", operator);
      skills = Set.copyOf(skills);
      Require.that(!skills.isEmpty(), "addSkills.skills", "empty", "at least one skill");
    }
  }

  /**
   * More pieces of a kit.
   *
   * @param kit id
   * @param units how many, 1 to 100
   * @param place where they lie at the start; null for where the first piece lies
   */
  record MoreUnits(String kit, int units, @Nullable String place) implements FloorChange {
    private static final int MOST = 100;

    public MoreUnits {
      Require.text("addKitUnits.kit", kit);
      Require.between("addKitUnits.units", units, 1, MOST);
    }
  }

  /**
   * Rigs that are open longer and operators who work longer, each day on which they do.
   *
   * @param rigs ids
   * @param operators ids; with the rigs at least one
   * @param earlierMinutes how much earlier their hours begin, 0 to 1439
   * @param laterMinutes how much later they end, 0 to 1439; one of both is above 0
   * @param regularTime true when the longer time is paid like any other, not as overtime
   */
  record LongerHours(
      List<String> rigs,
      List<String> operators,
      int earlierMinutes,
      int laterMinutes,
      boolean regularTime)
      implements FloorChange {
    /** Less than a day. */
    public static final int MOST_MINUTES = 1439;

    public LongerHours {
      rigs = List.copyOf(rigs);
      operators = List.copyOf(operators);
      Require.between("longerHours.earlierMinutes", earlierMinutes, 0, MOST_MINUTES);
      Require.between("longerHours.laterMinutes", laterMinutes, 0, MOST_MINUTES);
      Require.that(
          rigs.size() + operators.size() > 0, "longerHours.rigs", "empty", "rigs or operators");
      Require.that(
          earlierMinutes + laterMinutes > 0, "longerHours.laterMinutes", 0, "one of both above 0");
    }
  }

  /**
   * A second shift: rigs are open then too, and for each of some operators somebody else with the
   * same skills works it. They are paid regular time.
   *
   * @param rigs ids
   * @param operators ids of those whose skills are needed; with the rigs at least one
   * @param hours of the shift
   * @param breaks within it
   */
  record SecondShift(
      List<String> rigs, List<String> operators, OpenHours hours, List<OpenHours> breaks)
      implements FloorChange {
    public SecondShift {
      rigs = List.copyOf(rigs);
      operators = List.copyOf(operators);
      breaks = List.copyOf(breaks);
      Require.that(
          rigs.size() + operators.size() > 0, "secondShift.rigs", "empty", "rigs or operators");
    }
  }

  /**
   * Strobes that are ready again sooner, or later.
   *
   * @param rigs ids; empty for every rig that has strobes
   * @param seconds the new time, 0 or more; null where there is a factor
   * @param factor on the time there was, above 0; null where there are seconds
   */
  record StrobeRecycle(List<String> rigs, @Nullable Double seconds, @Nullable Double factor)
      implements FloorChange {
    public StrobeRecycle {
      rigs = List.copyOf(rigs);
      Require.that(
          (seconds == null) != (factor == null),
          "strobeRecycle.seconds",
          seconds + " and " + factor,
          "seconds or a factor");
      if (seconds != null) {
        Require.atLeast("strobeRecycle.seconds", seconds, 0);
      }
      if (factor != null) {
        Require.positive("strobeRecycle.factor", factor);
      }
    }
  }

  /**
   * Other hands-on changeover times; warm-up times stay.
   *
   * @param attribute id of the setup attribute
   * @param rigs ids; empty for every rig
   * @param from id of the value that is left; null for any
   * @param to id of the value that is set up; null for any
   * @param seconds the new hands-on time before the rig's own factor, 0 or more; null where there
   *     is a factor
   * @param factor on the times there were, above 0; null where there are seconds
   */
  record ChangeoverTimes(
      String attribute,
      List<String> rigs,
      @Nullable String from,
      @Nullable String to,
      @Nullable Integer seconds,
      @Nullable Double factor)
      implements FloorChange {
    public ChangeoverTimes {
      Require.text("changeoverTimes.attribute", attribute);
      rigs = List.copyOf(rigs);
      Require.that(
          (seconds == null) != (factor == null),
          "changeoverTimes.seconds",
          seconds + " and " + factor,
          "seconds or a factor");
      if (seconds != null) {
        Require.atLeast("changeoverTimes.seconds", seconds, 0);
      }
      if (factor != null) {
        Require.positive("changeoverTimes.factor", factor);
      }
    }
  }
}
