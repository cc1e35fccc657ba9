package rigmorrow.data.scenario;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import rigmorrow.data.floor.FloorParts;
import rigmorrow.data.json.Cursor;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.scenario.DemandChange;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.scenario.ScenarioChange;

/** Reads one change of a scenario. Whether it can be made is not asked here. */
final class ChangeReader {
  private final Floor floor;

  /** A reader for each field that a change may be. */
  private final Map<String, Function<Cursor, ScenarioChange>> kinds = new LinkedHashMap<>();

  /**
   * @param floor whose names the parts of a new rig may use
   */
  ChangeReader(Floor floor) {
    this.floor = floor;
    kinds.put("addRigLike", ChangeReader::rigLike);
    kinds.put("addRig", this::newRig);
    kinds.put("removeRig", rig -> new FloorChange.RigGone(rig.get().text("rig")));
    kinds.put("addOperatorLike", ChangeReader::operatorLike);
    kinds.put("addSkills", ChangeReader::skills);
    kinds.put("addKitUnits", ChangeReader::units);
    kinds.put("longerHours", ChangeReader::longer);
    kinds.put("secondShift", ChangeReader::second);
    kinds.put("strobeRecycle", ChangeReader::strobes);
    kinds.put("changeoverTimes", ChangeReader::changeovers);
    kinds.put("moreJobs", ChangeReader::jobs);
    kinds.put("mix", ChangeReader::mix);
  }

  /** The fields that a change has; one where it is sound. */
  List<String> fields(Cursor change) {
    return kinds.keySet().stream().filter(change::has).toList();
  }

  /**
   * The change.
   *
   * @throws IllegalArgumentException when there is none; that was told before
   */
  ScenarioChange change(Cursor change) {
    List<String> given = fields(change);
    if (given.isEmpty()) {
      throw new IllegalArgumentException("no change");
    }
    for (String second : given.subList(1, given.size())) {
      change.refuse(second, "a second change", "one in each element of the list");
    }
    Function<Cursor, ScenarioChange> kind = kinds.get(given.get(0));
    if (kind == null) {
      throw new IllegalArgumentException("no change");
    }
    return change.object(given.get(0), kind);
  }

  private static ScenarioChange rigLike(Cursor rig) {
    String id = rig.get().text("id");
    return new FloorChange.RigLike(rig.get().text("like"), id, rig.get().text("name", id));
  }

  private ScenarioChange newRig(Cursor rig) {
    return new FloorChange.NewRig(FloorParts.rig(rig, floor));
  }

  private static ScenarioChange operatorLike(Cursor operator) {
    String id = operator.get().text("id");
    return new FloorChange.OperatorLike(
        operator.get().text("like"), id, operator.get().text("name", id));
  }

  private static ScenarioChange skills(Cursor skills) {
    return new FloorChange.MoreSkills(skills.get().text("operator"), skills.words("skills"));
  }

  private static ScenarioChange units(Cursor units) {
    return new FloorChange.MoreUnits(
        units.get().text("kit"), units.get().whole("units"), units.get().textOrNull("place"));
  }

  private static ScenarioChange longer(Cursor longer) {
    someone(longer);
    int earlier = longer.get().whole("earlierMinutes");
    int later = longer.get().whole("laterMinutes");
    if (earlier + later == 0 && longer.sound("earlierMinutes", "laterMinutes")) {
      longer.refuse("laterMinutes", "a whole number above 0, or earlierMinutes above 0");
    }
    return new FloorChange.LongerHours(
        longer.texts("rigs"),
        longer.texts("operators"),
        earlier,
        later,
        longer.get().flag("regularTime"));
  }

  private static ScenarioChange second(Cursor second) {
    someone(second);
    return new FloorChange.SecondShift(
        second.texts("rigs"),
        second.texts("operators"),
        second.object("hours", FloorParts::hours),
        second.list("breaks", FloorParts::hours));
  }

  private static void someone(Cursor change) {
    boolean none = change.texts("rigs").isEmpty() && change.texts("operators").isEmpty();
    if (none && change.sound("rigs", "operators") && !change.reading().troubled(change.path())) {
      change.refuse("rigs", "ids of rigs, or operators with ids of operators");
    }
  }

  private static ScenarioChange strobes(Cursor strobes) {
    notBoth(strobes);
    return new FloorChange.StrobeRecycle(
        strobes.texts("rigs"),
        strobes.get().numberOrNull("seconds"),
        strobes.get().numberOrNull("factor"));
  }

  private static ScenarioChange changeovers(Cursor times) {
    notBoth(times);
    return new FloorChange.ChangeoverTimes(
        times.get().text("attribute"),
        times.texts("rigs"),
        times.get().textOrNull("from"),
        times.get().textOrNull("to"),
        times.get().wholeOrNull("seconds"),
        times.get().numberOrNull("factor"));
  }

  private static void notBoth(Cursor change) {
    if (change.has("seconds") && change.has("factor")) {
      change.refuse("factor", "nothing, since seconds is given");
    }
  }

  private static ScenarioChange jobs(Cursor jobs) {
    return new DemandChange.MoreJobs(jobs.get().number("percent"), jobs.get().large("seed"));
  }

  private static ScenarioChange mix(Cursor mix) {
    Cursor factors = mix.freeObject("factors");
    Map<String, Double> read = new TreeMap<>();
    for (String recipe : factors.names()) {
      Double factor = factors.get().numberOrNull(recipe);
      if (factor != null) {
        read.put(recipe, factor);
      }
    }
    if (read.isEmpty() && mix.sound("factors")) {
      mix.refuse("factors", "at least one recipe with a factor");
    }
    return new DemandChange.Mix(read, mix.get().large("seed"));
  }
}
