package rigmorrow.data.floor;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rigmorrow.data.json.Cursor;
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
    return floor.list("crew", operator -> operator(operator, seen));
  }

  private Operator operator(Cursor operator, Set<String> seen) {
    String id = operator.get().unique("id", seen);
    return new Operator(
        id,
        operator.get().text("name", id),
        operator.words("skills"),
        hours(operator, "shifts"),
        hours(operator, "breaks"),
        closures(operator));
  }

  List<OpenHours> hours(Cursor owner, String field) {
    return owner.list(field, CrewReader::openHours);
  }

  static OpenHours openHours(Cursor hours) {
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (String day : hours.words("days")) {
      days.add(DayOfWeek.of(DAYS.indexOf(day) + 1));
    }
    LocalTime from = hours.get().time("from");
    LocalTime to = hours.get().time("to");
    if (from.equals(to) && !to.equals(LocalTime.MIDNIGHT)) {
      if (hours.sound("from", "to")) {
        hours.refuse("to", "a time other than from " + from);
      }
      to = from.plusHours(1);
    }
    return new OpenHours(days, from, to);
  }

  List<Closure> closures(Cursor owner) {
    return owner.list("closed", CrewReader::closure);
  }

  private static Closure closure(Cursor closure) {
    LocalDateTime from = closure.get().dateTime("from");
    LocalDateTime to = closure.get().dateTime("to");
    if (!to.isAfter(from)) {
      if (closure.sound("from", "to")) {
        closure.refuse("to", "a time after from " + from);
      }
      to = from.plusDays(1);
    }
    return new Closure(from, to, closure.get().text("reason"));
  }

  List<Kit> kits(Cursor floor) {
    Set<String> seen = FloorReader.seen();
    return floor.list("kits", kit -> kit(kit, seen));
  }

  private Kit kit(Cursor kit, Set<String> seen) {
    String id = kit.get().unique("id", seen);
    return new Kit(
        id,
        kit.get().text("label", id),
        kit.object("provides", CrewReader::equipment),
        kit.list("units", this::unit),
        kit.get().whole("alignSeconds"),
        people(kit),
        skills(kit, "skills"),
        kit.get().textOrNull("caution"));
  }

  private KitUnit unit(Cursor unit) {
    return new KitUnit(unit.get().unique("id", seenUnits), unit.get().text("place"));
  }

  static Equipment equipment(Cursor equipment) {
    String kind = equipment.get().text("kind");
    return new Equipment(
        // There is no text that could stand in for the plugs which a socket needs.
        equipment.sound("plugs") ? kind : Cursor.NO_TEXT,
        equipment.get().numberOrNull("hangingPayloadKg"),
        equipment.get().wholeOrNull("dropMm"),
        equipment.get().wholeOrNull("volts"),
        equipment.get().wholeOrNull("watts"),
        equipment.get().textOrNull("plugs"),
        equipment.get().wholeOrNull("heightMm"));
  }

  List<FetchTime> fetches(Cursor floor) {
    return floor.list("fetches", this::fetch);
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
        fetch.get().whole("seconds"));
  }

  /** One or two people; two only where the crew has two. */
  int people(Cursor step) {
    int people = step.get().whole("people");
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
