package rigmorrow.benchmarks.textbook;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import rigmorrow.model.floor.AxisLimits;
import rigmorrow.model.floor.CameraReach;
import rigmorrow.model.floor.Costs;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.PlateSize;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.recipe.Handling;
import rigmorrow.model.recipe.LiftGeometry;
import rigmorrow.model.recipe.Lighting;
import rigmorrow.model.recipe.Physics;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.setup.SetupAttribute;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/**
 * Puts a textbook problem into a floor's words: machines are rigs that never close, processing
 * times are measured capture times, one recipe a job, setups are values of one attribute, and
 * handling takes no time. There is an operator for each rig, so that nobody is ever waited for.
 */
final class TextbookBatch {
  private static final String ATTRIBUTE = "setup";
  private static final LocalDate DATE = LocalDate.of(2026, 3, 2);
  private static final int DAY_SECONDS = 86_400;
  private static final int MOST_DAYS = 31;
  private static final int MOST_OPERATORS = 31;
  private static final OpenHours ALWAYS =
      new OpenHours(Set.of(), LocalTime.MIDNIGHT, LocalTime.MIDNIGHT);

  private final TextbookProblem problem;

  private TextbookBatch(TextbookProblem problem) {
    this.problem = problem;
  }

  static Batch of(TextbookProblem problem) {
    TextbookBatch one = new TextbookBatch(problem);
    return new Batch(one.floor(), one.shotList());
  }

  private Floor floor() {
    int operators = Math.min(MOST_OPERATORS, problem.rigs());
    return new Floor(
        problem.name(),
        ZoneOffset.UTC,
        numbers(problem.rigs()).map(this::rig).toList(),
        List.of(),
        List.of(),
        numbers(operators).map(TextbookBatch::operator).toList(),
        attributes(),
        changeovers(),
        numbers(problem.jobs().size()).map(this::recipe).toList(),
        List.of(),
        new Handling(0, 0, 0, 0, 0, 0, 0, 0, 0, Set.of(), Set.of(), Set.of()),
        new Physics(0.5, 1, 0, 5, 5, 0.3, 0.05, 1, 0, new LiftGeometry(800, 250, 0, 0.2, 1.5)),
        problem.goal(),
        new Costs("EUR", 0, 1, 0, 0, 0));
  }

  private static java.util.stream.Stream<Integer> numbers(int count) {
    return IntStream.range(0, count).boxed();
  }

  private Rig rig(int number) {
    AxisLimits axis = new AxisLimits(180, 360, 3600, 0);
    return new Rig(
        rigId(number),
        rigId(number),
        "rig",
        new PlateSize(850, 0, 1000, 40, 0, 1000, 800),
        new CameraReach(0, 1000, 90, 2000, 0, null, true, 5),
        axis,
        axis,
        List.of(),
        Set.of(),
        Map.of(),
        setup(problem.setups().initial()),
        1,
        false,
        Map.of(),
        List.of(ALWAYS),
        List.of(),
        null,
        List.of());
  }

  private static Operator operator(int number) {
    String id = "O" + (number + 1);
    return new Operator(id, id, Set.of(), List.of(ALWAYS), List.of(), List.of());
  }

  private List<SetupAttribute> attributes() {
    if (problem.setups().families() == 0) {
      return List.of();
    }
    List<AttributeValue> values =
        numbers(problem.setups().families())
            .map(family -> value(family))
            .map(id -> new AttributeValue(id, id, null, Set.of(), null))
            .toList();
    return List.of(new SetupAttribute(ATTRIBUTE, ATTRIBUTE, values));
  }

  /** A line for every setup that takes time; one line for all that take none. */
  private List<ChangeoverRule> changeovers() {
    List<ChangeoverRule> lines = new ArrayList<>();
    SetupTimes setups = problem.setups();
    for (int rig = 0; rig < setups.rigs(); rig++) {
      for (int from = 0; from < setups.families(); from++) {
        for (int to = 0; to < setups.families(); to++) {
          int seconds = setups.seconds(rig, from, to);
          if (seconds > 0) {
            lines.add(line(value(from), value(to), Set.of(rigId(rig)), seconds));
          }
        }
      }
    }
    if (setups.families() > 0) {
      lines.add(line(ChangeoverRule.ANY, ChangeoverRule.ANY, Set.of(), 0));
    }
    return lines;
  }

  private static ChangeoverRule line(String from, String to, Set<String> rigs, int seconds) {
    return new ChangeoverRule(ATTRIBUTE, from, to, rigs, seconds, 0, 1, Set.of(), null);
  }

  private Recipe recipe(int number) {
    TextbookJob job = problem.jobs().get(number);
    Map<String, Integer> seconds = new TreeMap<>();
    for (int rig = 0; rig < problem.rigs(); rig++) {
      seconds.put(rigId(rig), job.seconds().get(rig));
    }
    return new Recipe(
        recipeId(number),
        recipeId(number),
        List.of(),
        List.of(),
        0,
        1,
        Lighting.EITHER,
        setup(job.family()),
        Set.of(),
        Set.of(),
        false,
        0,
        seconds);
  }

  private Setup setup(int family) {
    return problem.setups().families() == 0
        ? Setup.ANY
        : new Setup(Map.of(ATTRIBUTE, value(family)));
  }

  private ShotList shotList() {
    List<Pin> pins = new ArrayList<>();
    for (int number = 0; number < problem.jobs().size(); number++) {
      Integer place = problem.jobs().get(number).place();
      if (place != null) {
        pins.add(new Pin(jobId(number), rigId(0), place, null, PinState.PLANNED));
      }
    }
    return new ShotList(DATE, days(), numbers(problem.jobs().size()).map(this::job).toList(), pins);
  }

  /** So many that all jobs could follow each other on one rig. */
  private int days() {
    long seconds =
        problem.jobs().stream().mapToLong(job -> java.util.Collections.max(job.seconds())).sum()
            + (long) problem.jobs().size() * problem.setups().longest();
    return (int) Math.min(MOST_DAYS, 1 + seconds / DAY_SECONDS);
  }

  private ShotJob job(int number) {
    TextbookJob job = problem.jobs().get(number);
    String id = jobId(number);
    Integer due = job.dueSecond();
    Promise promise =
        due == null ? null : new Promise(DATE.atStartOfDay().plusSeconds(due), job.must());
    Item box =
        new Item(
            100,
            100,
            100,
            1.0,
            null,
            null,
            null,
            null,
            null,
            null,
            false,
            1,
            false,
            0,
            null,
            null,
            HeightSource.LIST,
            false);
    return new ShotJob(
        id,
        id,
        null,
        id,
        id,
        recipeId(number),
        box,
        Setup.ANY,
        null,
        null,
        promise,
        job.weight(),
        null);
  }

  private static String rigId(int number) {
    return "R" + (number + 1);
  }

  private static String jobId(int number) {
    return "J" + (number + 1);
  }

  private static String recipeId(int number) {
    return "recipe " + (number + 1);
  }

  private static String value(int family) {
    return "S" + (family + 1);
  }
}
