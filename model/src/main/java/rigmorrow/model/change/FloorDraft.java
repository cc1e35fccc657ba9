package rigmorrow.model.change;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.floor.FetchTime;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.PlateRing;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/** A batch on its way to being another, and what could not be done on the way. */
final class FloorDraft {
  private final Batch before;
  final List<Rig> rigs;
  final List<Kit> kits;
  final List<FetchTime> fetches;
  final List<Operator> crew;
  final List<ChangeoverRule> changeovers;
  final List<Recipe> recipes;
  List<ShotJob> jobs;
  final List<Pin> pins;

  /** Regular hours of those whose hours are others. */
  private final Map<String, List<OpenHours>> regularShifts = new HashMap<>();

  private final List<ChangeProblem> problems = new ArrayList<>();
  private int change;

  FloorDraft(Batch before) {
    this.before = before;
    Floor floor = before.floor();
    rigs = new ArrayList<>(floor.rigs());
    kits = new ArrayList<>(floor.kits());
    fetches = new ArrayList<>(floor.fetches());
    crew = new ArrayList<>(floor.crew());
    changeovers = new ArrayList<>(floor.changeovers());
    recipes = new ArrayList<>(floor.recipes());
    jobs = new ArrayList<>(before.shotList().jobs());
    pins = new ArrayList<>(before.shotList().pins());
  }

  /** The floor as it was, for what no change touches. */
  Floor before() {
    return before.floor();
  }

  /** The shot list as it was, for its date and days. */
  ShotList listBefore() {
    return before.shotList();
  }

  /** Says which change is made now. */
  void begin(int index) {
    change = index;
  }

  /** Notes that the change cannot be made. */
  void refuse(String field, String value, String accepted) {
    refuse(field, value, accepted, List.of());
  }

  /** Notes that the change cannot be made because there is no such thing. */
  void refuse(String field, String value, String accepted, List<String> known) {
    problems.add(new ChangeProblem(change, field, value, accepted, known));
  }

  /** Index of a rig; -1, and noted, when there is none. */
  int rig(String field, String id) {
    return index(field, id, "rigs", rigs.stream().map(Rig::id).toList());
  }

  /** Index of an operator; -1, and noted, when there is none. */
  int operator(String field, String id) {
    return index(field, id, "operators", crew.stream().map(Operator::id).toList());
  }

  /** Index of a kit; -1, and noted, when there is none. */
  int kit(String field, String id) {
    return index(field, id, "kit", kits.stream().map(Kit::id).toList());
  }

  private int index(String field, String id, String accepted, List<String> known) {
    int index = known.indexOf(id);
    if (index < 0) {
      refuse(field, id, accepted, known);
    }
    return index;
  }

  /** Indexes of the rigs that are there; of the others it is noted. */
  List<Integer> rigs(List<String> ids) {
    return ids.stream().distinct().map(id -> rig("rigs", id)).filter(index -> index >= 0).toList();
  }

  /** Indexes of the operators that are there; of the others it is noted. */
  List<Integer> operators(List<String> ids) {
    return ids.stream()
        .distinct()
        .map(id -> operator("operators", id))
        .filter(index -> index >= 0)
        .toList();
  }

  /** Names of all places where pieces of kit lie. */
  Set<String> places() {
    Set<String> places = new HashSet<>();
    kits.forEach(kit -> kit.units().forEach(unit -> places.add(unit.place())));
    return places;
  }

  /** Gives an operator other hours; without {@code regular} what is beyond the old is overtime. */
  void shifts(int index, UnaryOperator<List<OpenHours>> change, boolean regular) {
    Operator one = crew.get(index);
    List<OpenHours> paid = regularShifts.getOrDefault(one.id(), one.shifts());
    regularShifts.put(one.id(), regular ? change.apply(paid) : paid);
    crew.set(index, with(one, one.skills(), change.apply(one.shifts())));
  }

  /** The operator with other skills and hours. */
  static Operator with(Operator one, Set<String> skills, List<OpenHours> shifts) {
    return new Operator(one.id(), one.name(), skills, shifts, one.breaks(), one.closed());
  }

  /** Every skill that the floor asks for. */
  Set<String> skillsAskedFor() {
    Set<String> skills = new HashSet<>();
    changeovers.forEach(rule -> skills.addAll(rule.skills()));
    kits.forEach(kit -> skills.addAll(kit.skills()));
    recipes.forEach(recipe -> skills.addAll(recipe.skills()));
    for (Rig rig : rigs) {
      @Nullable PlateRing ring = rig.ring();
      skills.addAll(ring == null ? Set.of() : ring.skills());
    }
    skills.addAll(before().handling().loadSkills());
    skills.addAll(before().handling().hangSkills());
    skills.addAll(before().handling().powerSkills());
    return skills;
  }

  /** The floor with what was changed so far. */
  Floor floor() {
    Floor floor = before();
    return new Floor(
        floor.name(),
        floor.zone(),
        rigs,
        kits,
        fetches,
        crew,
        floor.attributes(),
        changeovers,
        recipes,
        floor.itemSetups(),
        floor.handling(),
        floor.physics(),
        floor.weights(),
        floor.costs());
  }

  /** What came of it. */
  ScenarioBatch finish() {
    ShotList list = listBefore();
    boolean sameList = jobs.equals(list.jobs()) && pins.equals(list.pins());
    Set<String> there = new HashSet<>();
    jobs.forEach(job -> there.add(job.id()));
    List<String> heldBack = list.heldBack().stream().filter(there::contains).toList();
    ShotList after = sameList ? list : new ShotList(list.date(), list.days(), jobs, pins, heldBack);
    List<Operator> regular =
        crew.stream()
            .map(one -> with(one, one.skills(), regularShifts.getOrDefault(one.id(), one.shifts())))
            .toList();
    return new ScenarioBatch(new Batch(floor(), after), regular, problems);
  }
}
