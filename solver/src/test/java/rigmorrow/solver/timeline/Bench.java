package rigmorrow.solver.timeline;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import rigmorrow.model.FloorBuilder;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.ItemBuilder;
import rigmorrow.model.JobBuilder;
import rigmorrow.model.RecipeBuilder;
import rigmorrow.model.RigBuilder;
import rigmorrow.model.floor.Equipment;
import rigmorrow.model.floor.FetchTime;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.KitUnit;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.recipe.Handling;
import rigmorrow.model.recipe.Still;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.solver.fixture.CheckedPlans;
import rigmorrow.solver.fixture.RandomSequences;

/**
 * A floor whose times are added up in the head: rigs "left" and "right", both white and open 08:00
 * to 18:00; operator "ann" from 08:00 to 17:00 with a break at 12:00 to 12:30; loading takes 2
 * minutes, capture 10, unloading 1. A change of background takes 5 minutes.
 */
final class Bench {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ISO_LOCAL_TIME;

  private final FloorBuilder floor =
      new FloorBuilder()
          .rigs(rig("left").build(), rig("right").build())
          .crew(person("ann"))
          .attributes(
              FloorFixtures.attribute(
                  "background", FloorFixtures.value("white"), FloorFixtures.value("grey")))
          .changeovers(FloorFixtures.change("background", "*", "*", 300, 0, 1))
          .handling(handling(120, 60))
          .recipes(recipe("spin").build(), recipe("look").attended(true).build());
  private final Map<String, JobBuilder> jobs = new LinkedHashMap<>();
  private final Map<String, List<String>> order = new LinkedHashMap<>();
  private final List<Pin> pins = new ArrayList<>();
  private int days = 1;

  static RigBuilder rig(String id) {
    return new RigBuilder(id)
        .takesKit("gear")
        .initialSetup(new Setup(Map.of("background", "white")))
        .open(FloorFixtures.hours("08:00", "18:00"));
  }

  /** At work 08:00 to 17:00, away 12:00 to 12:30. */
  static Operator person(String id, String... moreSkills) {
    List<String> skills = new ArrayList<>(List.of(moreSkills));
    skills.add("handle");
    return new Operator(
        id,
        id,
        Set.copyOf(skills),
        List.of(FloorFixtures.hours("08:00", "17:00")),
        List.of(FloorFixtures.hours("12:00", "12:30")),
        List.of());
  }

  /** Ten minutes on any of the rigs. */
  static RecipeBuilder recipe(String id) {
    return new RecipeBuilder(id)
        .stills(new Still(0, 0))
        .measuredCaptureSeconds(Map.of("left", 600, "right", 600, "third", 600));
  }

  static Handling handling(int loadSeconds, int unloadSeconds) {
    Set<String> nothing = Set.of();
    return new Handling(
        loadSeconds, 0, 0, 0, 0, 0, unloadSeconds, 0, 0, Set.of("handle"), nothing, nothing);
  }

  /** Kit "gear": 1 minute from the shelf, 2 between rigs, 1 to align. Recipe "geared" needs it. */
  Bench gear(String... places) {
    List<KitUnit> units = new ArrayList<>();
    for (String place : places) {
      units.add(new KitUnit("gear-" + (units.size() + 1), place));
    }
    floor
        .kits(new Kit("gear", "Gear", Equipment.of("frame"), units, 60, 1, Set.of(), null))
        .fetches(new FetchTime("shelf", "*", 60), new FetchTime("*", "*", 120))
        .recipes(recipe("spin").build(), recipe("geared").equipment("frame").build());
    return this;
  }

  Bench floor(Consumer<FloorBuilder> change) {
    change.accept(floor);
    return this;
  }

  Bench days(int other) {
    days = other;
    return this;
  }

  /** Adds a job at the end of a rig. */
  Bench job(String rig, String id, Consumer<JobBuilder> change) {
    JobBuilder job = new JobBuilder(id);
    change.accept(job);
    jobs.put(id, job);
    order.computeIfAbsent(rig, key -> new ArrayList<>()).add(id);
    return this;
  }

  Bench job(String rig, String id) {
    return job(rig, id, plain -> {});
  }

  Bench pin(String job, String rig, int place, String startsAt, PinState state) {
    pins.add(new Pin(job, rig, place, at(startsAt), state));
    return this;
  }

  static LocalDateTime at(String time) {
    return FloorFixtures.MONDAY.atTime(LocalTime.parse(time));
  }

  static ItemBuilder forTwo() {
    return new ItemBuilder().handsNeeded(2);
  }

  Batch batch() {
    List<ShotJob> list = jobs.values().stream().map(JobBuilder::build).toList();
    return new Batch(floor.build(), new ShotList(FloorFixtures.MONDAY, days, list, pins));
  }

  /** The plan, past the checker; see {@link CheckedPlans#weighed}. */
  Plan plan(FloorRule... also) {
    Batch batch = batch();
    CompiledBatch compiled = CompiledBatch.of(batch);
    List<String> ids = compiled.jobs.stream().map(ShotJob::id).toList();
    List<List<Integer>> byRig = new ArrayList<>();
    for (int rig = 0; rig < compiled.rigCount(); rig++) {
      List<String> here = order.getOrDefault(compiled.rigs.get(rig).id(), List.of());
      byRig.add(here.stream().map(ids::indexOf).toList());
    }
    Sequences sequences = RandomSequences.scored(compiled, byRig, List.of());
    return CheckedPlans.decoded(compiled, batch, sequences, also);
  }

  /** One line for a job, such as "load 08:00-08:02 ann, capture 08:02-08:12, ...". */
  String line(String job) {
    return line(plan(), job);
  }

  static String line(Plan plan, String job) {
    PlannedJob planned = plan.job(job).orElseThrow();
    Attended changeover = planned.changeover();
    return (changeover == null ? "" : part(plan, "change", changeover) + ", ")
        + part(plan, "load", planned.load())
        + ", "
        + part(plan, "capture", new Attended(planned.capture(), planned.captureOperators()))
        + ", "
        + part(plan, "unload", planned.unload());
  }

  private static String part(Plan plan, String name, Attended part) {
    String who = String.join("+", part.operators());
    return (name + " " + clock(plan, part.span().start()) + "-" + clock(plan, part.span().end()))
        + (who.isEmpty() ? "" : " " + who);
  }

  /** Floor time, with seconds only where there are some and a plus for each day gone by. */
  private static String clock(Plan plan, int second) {
    LocalDateTime time = plan.date().atStartOfDay().plusSeconds(second);
    String text = CLOCK.format(time);
    return "+".repeat(time.getDayOfYear() - plan.date().getDayOfYear())
        + (text.endsWith(":00") ? text.substring(0, 5) : text);
  }
}
