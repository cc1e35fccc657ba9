package rigmorrow.solver.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.model.FloorBuilder;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.JobBuilder;
import rigmorrow.model.RecipeBuilder;
import rigmorrow.model.RigBuilder;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.recipe.Handling;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.recipe.Still;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;

/** Where the best plan is known by a theorem or by hand, the bound is equal to it. */
class BoundsReachedTest {
  private static final LocalDateTime MORNING = FloorFixtures.MONDAY.atTime(8, 0);
  private static final long STEPS = 20_000;

  private final FloorBuilder floor =
      new FloorBuilder()
          .attributes(
              FloorFixtures.attribute(
                  "background",
                  FloorFixtures.value("white"),
                  FloorFixtures.value("grey"),
                  FloorFixtures.value("black")))
          .changeovers(
              FloorFixtures.change("background", "*", "*", 300, 0, 1),
              FloorFixtures.change("background", "white", "grey", 120, 0, 1))
          .crew(person("ann"))
          .handling(handling(0, 0));
  private final List<ShotJob> jobs = new ArrayList<>();
  private final Map<Integer, Recipe> recipes = new HashMap<>();

  /** The sum of all jobs, cut into equal parts: no preemptive plan is shorter (McNaughton 1959). */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void finishingOfMachinesThatAreFull(long seed) {
    rigs(3, "18:00");
    Random random = new Random(seed);
    List<Integer> minutes = new ArrayList<>();
    for (int machine = 0; machine < 3; machine++) {
      int cut = 1 + random.nextInt(58);
      minutes.addAll(List.of(cut, 60 - cut));
    }
    Collections.shuffle(minutes, random);
    minutes.forEach(one -> job(one));

    assertThat(reached().finishingPoints()).isEqualTo(60);
  }

  @Test
  void finishingWhereOneJobIsLongerThanAllOthers() {
    rigs(3, "18:00");
    IntStream.of(120, 9, 14, 22, 31, 8, 17).forEach(this::job);

    assertThat(reached().finishingPoints()).isEqualTo(120);
  }

  /** Two rigs, one operator: loading 10 and unloading 5 minutes, pictures in no time. */
  @Test
  void finishingWhereTheCrewHasNoMoment() {
    rigs(2, "18:00");
    floor.handling(handling(600, 300));
    IntStream.range(0, 4).forEach(i -> job(0));

    assertThat(reached().finishingPoints()).isEqualTo(60);
  }

  /** White stands; then grey from white, 2 minutes, and black, 5: grey is never cheaper. */
  @Test
  void changeoversInTheBestOrder() {
    rigs(1, "18:00");
    for (String background : List.of("black", "grey", "white", "grey", "black", "white")) {
      jobs.add(new JobBuilder(id()).recipe(recipe(10)).setup(backgrounds(background)).build());
    }

    PlanBounds bounds = reached();

    assertThat(bounds.changeoverPoints()).isEqualTo(4 * (2 + 5));
    assertThat(bounds.finishingPoints()).isEqualTo(6 * 10 + 2 + 5);
  }

  @Test
  void changeoversWhereEachRigCanKeepItsSetup() {
    rigs(2, "18:00");
    jobs.add(new JobBuilder(id()).recipe(recipe(10)).setup(backgrounds("black")).build());
    jobs.add(new JobBuilder(id()).recipe(recipe(10)).setup(backgrounds("white")).build());

    assertThat(reached().changeoverPoints()).isEqualTo(4 * 5);
  }

  /** All due at once on one machine: the shortest first (Smith 1956). */
  @Test
  void latenessOfJobsThatAreDueTogether() {
    rigs(1, "18:00");
    for (int minutes : new int[] {30, 10, 20}) {
      jobs.add(
          new JobBuilder(id())
              .recipe(recipe(minutes))
              .shouldBy(MORNING.plusMinutes(15))
              .weight(3)
              .build());
    }

    // Done after 10, 30 and 60 minutes: late by 0, 15 and 45.
    assertThat(reached().latenessPoints()).isEqualTo(10 * 3 * (15 + 45));
  }

  @Test
  void latenessOfASampleThatArrivesAfterItsPromise() {
    rigs(2, "18:00");
    jobs.add(
        new JobBuilder(id())
            .recipe(recipe(10))
            .arrivesAt(MORNING.plusHours(1))
            .shouldBy(MORNING.plusMinutes(40))
            .weight(2)
            .build());

    assertThat(reached().latenessPoints()).isEqualTo(10 * 2 * 30);
  }

  /** An hour holds three of five jobs alike: the two lightest go. */
  @Test
  void leftOutWhereARigIsOpenTooShort() {
    rigs(1, "09:00");
    for (int weight : new int[] {5, 1, 4, 2, 3}) {
      jobs.add(new JobBuilder(id()).recipe(recipe(20)).weight(weight).build());
    }

    assertThat(reached().leftOutPoints()).isEqualTo(1 + 2);
  }

  @Test
  void leftOutWhereAPromiseCannotBeKept() {
    rigs(1, "18:00");
    job(10);
    jobs.add(
        new JobBuilder(id()).recipe(recipe(10)).mustBy(MORNING.plusMinutes(9)).weight(7).build());

    assertThat(reached().leftOutPoints()).isEqualTo(7 * 10);
  }

  /** A job asked to stay out is worth its setup: who leaves it out saves the change. */
  @Test
  void leavesOpenWhatMayBeLeftOut() {
    rigs(1, "18:00");
    jobs.add(new JobBuilder(id()).recipe(recipe(10)).weight(3).setup(backgrounds("black")).build());
    jobs.add(new JobBuilder(id()).recipe(recipe(30)).weight(9).setup(backgrounds("grey")).build());
    Batch batch = batch();
    LowerBound bound = LowerBound.of(rigmorrow.solver.timeline.CompiledBatch.of(batch));

    assertThat(bound.among(2)).isEqualTo(bound.among(0));
    assertThat(bound.among(0)).isEqualTo(new PlanBounds(0, 0, 28, 47));
    assertThat(bound.among(3).changeoverPoints()).isBetween(1L, 8L);
    assertThat(bound.among(3).finishingPoints()).isBetween(30L, 32L);
    assertThat(bound.among(12)).isEqualTo(new PlanBounds(0, 0, 0, 0));
  }

  /** The bounds of the batch, each found equal to what the search comes to. */
  private PlanBounds reached() {
    SolverSettings settings = SolverSettings.steps(STEPS, 1);
    var plan = FloorSolver.solve(batch(), settings, SolveListener.NONE);
    PlanFigures figures = plan.figures();
    assertThat(plan.bounds())
        .isEqualTo(
            new PlanBounds(
                figures.leftOutPoints(),
                figures.latenessPoints(),
                figures.changeoverPoints(),
                figures.finishingPoints()));
    return plan.bounds();
  }

  private Batch batch() {
    floor.recipes(recipes.values().toArray(Recipe[]::new));
    return new Batch(floor.build(), new ShotList(FloorFixtures.MONDAY, 1, jobs, List.of()));
  }

  private void rigs(int count, String closes) {
    floor.rigs(
        IntStream.range(0, count)
            .mapToObj(
                rig ->
                    new RigBuilder("rig-" + rig)
                        .initialSetup(new Setup(backgrounds("white")))
                        .open(FloorFixtures.hours("08:00", closes))
                        .build())
            .toArray(Rig[]::new));
  }

  private void job(int minutes) {
    jobs.add(new JobBuilder(id()).recipe(recipe(minutes)).build());
  }

  private String id() {
    return "job-" + jobs.size();
  }

  private String recipe(int minutes) {
    String id = "takes-" + minutes;
    Map<String, Integer> seconds = new HashMap<>();
    IntStream.range(0, 3).forEach(rig -> seconds.put("rig-" + rig, 60 * minutes));
    recipes.put(
        minutes,
        new RecipeBuilder(id).stills(new Still(0, 0)).measuredCaptureSeconds(seconds).build());
    return id;
  }

  private static Map<String, String> backgrounds(String value) {
    return Map.of("background", value);
  }

  private static Operator person(String id) {
    return new Operator(
        id,
        id,
        Set.of("handle"),
        List.of(FloorFixtures.hours("08:00", "18:00")),
        List.of(),
        List.of());
  }

  private static Handling handling(int loadSeconds, int unloadSeconds) {
    Set<String> nothing = Set.of();
    return new Handling(
        loadSeconds, 0, 0, 0, 0, 0, unloadSeconds, 0, 0, Set.of("handle"), nothing, nothing);
  }
}
