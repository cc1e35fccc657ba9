package rigmorrow.data.demo;

import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Operator;

/**
 * The crew: on each shift somebody can do any changeover alone, since one operator is in charge of
 * all its steps.
 */
final class DemoCrew {
  static final String HANDLING = "handling";
  static final String HANGING = "hanging";
  static final String RIGGING = "rigging";
  static final String CAMERA = "camera";
  static final String ELECTRICAL = "electrical";
  static final String STYLING = "styling";

  private static final Set<String> TECHNICIAN =
      Set.of(HANDLING, HANGING, RIGGING, CAMERA, ELECTRICAL);
  private static final Set<String> PHOTO_STYLIST = Set.of(HANDLING, HANGING, CAMERA, STYLING);
  private static final Set<String> STYLIST = Set.of(HANDLING, HANGING, RIGGING, STYLING);

  private DemoCrew() {}

  /** The skills as a set. */
  static Set<String> only(String... skills) {
    return Set.of(skills);
  }

  /** The first so many of the nine who could work there. */
  static List<Operator> first(int operators) {
    return List.of(
            early("O1", "Signe", TECHNICIAN, 11, 30),
            early("O2", "Anders", PHOTO_STYLIST, 12, 0),
            late("O3", "Maja", TECHNICIAN, 13, 0),
            late("O4", "Emil", STYLIST, 13, 30),
            early("O5", "Freja", PHOTO_STYLIST, 12, 30),
            late("O6", "Jonas", STYLIST, 14, 0),
            middle("O7", "Karla", TECHNICIAN, 12, 15),
            early("O8", "Viggo", TECHNICIAN, 11, 0),
            late("O9", "Liv", PHOTO_STYLIST, 14, 30))
        .subList(0, operators);
  }

  private static Operator early(
      String id, String name, Set<String> skills, int lunchHour, int lunchMinute) {
    return operator(
        id, name, skills, LocalTime.of(7, 0), LocalTime.of(15, 30), lunchHour, lunchMinute);
  }

  private static Operator middle(
      String id, String name, Set<String> skills, int lunchHour, int lunchMinute) {
    return operator(
        id, name, skills, LocalTime.of(8, 0), LocalTime.of(16, 30), lunchHour, lunchMinute);
  }

  private static Operator late(
      String id, String name, Set<String> skills, int lunchHour, int lunchMinute) {
    return operator(
        id, name, skills, LocalTime.of(9, 30), LocalTime.of(18, 0), lunchHour, lunchMinute);
  }

  private static Operator operator(
      String id,
      String name,
      Set<String> skills,
      LocalTime from,
      LocalTime to,
      int lunchHour,
      int lunchMinute) {
    LocalTime lunch = LocalTime.of(lunchHour, lunchMinute);
    return new Operator(
        id,
        name,
        skills,
        List.of(new OpenHours(Set.of(), from, to)),
        List.of(new OpenHours(Set.of(), lunch, lunch.plusMinutes(30))),
        List.of());
  }
}
