package rigmorrow.data.shot;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rigmorrow.data.problem.Examples;
import rigmorrow.model.shot.ShotList;

/** Counts sizes that are so small that a slip of unit is likelier, to be told to the user. */
public final class SmallSizes {
  /** Below this a size in millimetres is more often a slip of unit or decimal mark than true. */
  private static final int SMALL_MM = 10;

  /** What an item measures; an offset, a drop or a centre of mass may well be small. */
  private static final Set<JobField> SIZES =
      EnumSet.of(
          JobField.LENGTH_MM,
          JobField.WIDTH_MM,
          JobField.HEIGHT_MM,
          JobField.BASE_LENGTH_MM,
          JobField.BASE_WIDTH_MM,
          JobField.ROTATION_DIAMETER_MM);

  private final Map<String, Examples> small = new LinkedHashMap<>();

  /** The lines about a shot list that was read from JSON or YAML, in which sizes are in mm. */
  public static List<String> linesOf(ShotList list) {
    SmallSizes sizes = new SmallSizes();
    for (int i = 0; i < list.jobs().size(); i++) {
      JobDraft draft = JobDraft.of(list.jobs().get(i));
      for (JobField field : SIZES) {
        if (draft.get(field) instanceof Integer mm) {
          sizes.take(field, field.key(), mm, "jobs[" + i + "]");
        }
      }
    }
    return sizes.lines();
  }

  /**
   * Takes what a field has; nothing is counted of one that is no size.
   *
   * @param name of the field or column, as the file has it
   * @param where it stands
   */
  public void take(JobField field, String name, int mm, String where) {
    if (SIZES.contains(field) && mm < SMALL_MM) {
      small.merge(name, Examples.of(mm + " mm (" + where + ")"), Examples::and);
    }
  }

  /** One line for each field or column with a size that looks odd. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    small.forEach(
        (name, found) ->
            lines.add(
                "%s: %s; check unit and decimal mark"
                    .formatted(
                        name,
                        found.phrase(
                            "size is under " + SMALL_MM + " mm",
                            "sizes are under " + SMALL_MM + " mm"))));
    return lines;
  }
}
