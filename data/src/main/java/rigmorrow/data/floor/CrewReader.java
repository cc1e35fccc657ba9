package rigmorrow.data.floor;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rigmorrow.data.json.Cursor;
import rigmorrow.data.problem.Words;
import rigmorrow.model.floor.Closure;
import rigmorrow.model.floor.Equipment;
import rigmorrow.model.floor.FetchTime;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.KitUnit;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Operator;

/** Reads the crew, hours, and the kit that the crew moves. */
final class CrewReader {
  private static final List<String> DAYS = List.of("MON", "TUE", "WED", "THU", "FRI", "SAT", "SUN");

  private final FloorNames names;
  private final Set<String> seenUnits = FloorReader.seen();

  CrewReader(FloorNames names) {
    this.names = names;
  }

  List<Operator> operators(Cursor floor) {
    Set<String> seen = FloorReader.seen();
    floor.atMost("crew", Bounds.MOST_OPERATORS);
    return floor.list("crew", "operator", 1, operator -> operator(operator, seen));
  }

  private Operator operator(Cursor operator, Set<String> seen) {
    String id = operator.get().unique("id", seen);
    return new Operator(
        id,
        operator.get().text("name", id),
        operator.words("skills"),
        hours(operator, "shifts", 1),
        hours(operator, "breaks", 0),
        closures(operator));
  }

  List<OpenHours> hours(Cursor owner, String field, int least) {
    return owner.list(field, "hours", least, CrewReader::openHours);
  }

  private static OpenHours openHours(Cursor hours) {
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (String day : hours.words("days")) {
      int index = DAYS.indexOf(day);
      if (index < 0) {
        hours.refuse("days", day, "days: " + Words.choice(DAYS, day));
      } else {
        days.add(DayOfWeek.of(index + 1));
      }
    }
    int before = hours.reading().problems().count();
    LocalTime from = hours.get().time("from");
    LocalTime to = hours.get().time("to");
    if (from.equals(to) && !to.equals(LocalTime.MIDNIGHT)) {
      if (hours.reading().problems().count() == before) {
        hours.refuse("to", "a time other than from " + from);
      }
      to = from.plusHours(1);
    }
    return new OpenHours(days, from, to);
  }

  List<Closure> closures(Cursor owner) {
    return owner.list("closed", "closure", 0, CrewReader::closure);
  }

  private static Closure closure(Cursor closure) {
    int before = closure.reading().problems().count();
    LocalDateTime from = closure.get().dateTime("from");
    LocalDateTime to = closure.get().dateTime("to");
    if (!to.isAfter(from)) {
      if (closure.reading().problems().count() == before) {
        closure.refuse("to", "a time after from " + from);
      }
      to = from.plusDays(1);
    }
    return new Closure(from, to, closure.get().text("reason"));
  }

  List<Kit> kits(Cursor floor) {
    Set<String> seen = FloorReader.seen();
    floor.atMost("kits", Bounds.MOST_KITS);
    return floor.list("kits", "kit", 0, kit -> kit(kit, seen));
  }

  private Kit kit(Cursor kit, Set<String> seen) {
    String id = kit.get().unique("id", seen);
    return new Kit(
        id,
        kit.get().text("label", id),
        kit.object("provides", "equipment", CrewReader::equipment),
        kit.list("units", "unit", 1, this::unit),
        kit.get().whole("alignSeconds", Bounds.SECONDS),
        people(kit),
        skills(kit, "skills"),
        kit.get().textOrNull("caution"));
  }

  private KitUnit unit(Cursor unit) {
    return new KitUnit(unit.get().unique("id", seenUnits), unit.get().text("place"));
  }

  /** Equipment of the kinds that carry figures needs them, or the fit check could not judge. */
  static Equipment equipment(Cursor equipment) {
    String kind = equipment.get().text("kind");
    boolean complete =
        switch (kind) {
          case Equipment.ROTATOR -> needed(equipment, kind, "hangingPayloadKg", "dropMm");
          case Equipment.POWERED_SOCKET -> needed(equipment, kind, "volts", "watts", "plugs");
          case Equipment.OVERHEAD_FRAME -> needed(equipment, kind, "heightMm");
          default -> true;
        };
    return new Equipment(
        complete ? kind : Cursor.NO_TEXT,
        equipment.get().numberOrNull("hangingPayloadKg", Bounds.MASS_KG),
        equipment.get().wholeOrNull("dropMm", Bounds.SIZE_MM),
        equipment.get().wholeOrNull("volts", Bounds.COUNT),
        equipment.get().wholeOrNull("watts", Bounds.COUNT),
        equipment.get().textOrNull("plugs"),
        equipment.get().wholeOrNull("heightMm", Bounds.SIZE_MM));
  }

  private static boolean needed(Cursor equipment, String kind, String... fields) {
    boolean complete = true;
    for (String field : fields) {
      if (!equipment.has(field)) {
        equipment.refuse(field, "a value, since " + kind + " needs one");
        complete = false;
      }
    }
    return complete;
  }

  List<FetchTime> fetches(Cursor floor) {
    return floor.list("fetches", "fetch", 0, this::fetch);
  }

  private FetchTime fetch(Cursor fetch) {
    Set<String> known = names.rigs() == null ? null : new LinkedHashSet<>(names.rigs());
    if (known != null) {
      known.add("*");
    }
    Set<String> origins =
        known == null || names.places() == null ? null : new LinkedHashSet<>(known);
    if (origins != null) {
      origins.addAll(names.places());
    }
    return new FetchTime(
        fetch.get().reference("from", origins, "a rig, the place of a unit of kit or *"),
        fetch.get().reference("to", known, "a rig or *"),
        fetch.get().whole("seconds", Bounds.SECONDS));
  }

  /** One or two people; two only where the crew has two. */
  int people(Cursor step) {
    int people = step.get().whole("people", Bounds.PEOPLE, 1);
    if (people > names.operators()) {
      step.refuse("people", "1, since the crew has only " + names.operators());
    }
    return people;
  }

  /** Skills that at least one operator has together. */
  Set<String> skills(Cursor step, String field) {
    Set<String> skills = step.words(field);
    if (!skills.isEmpty() && names.operatorsWith(skills) == 0) {
      step.refuse(field, "skills that one operator of the crew has together");
    }
    return skills;
  }
}
