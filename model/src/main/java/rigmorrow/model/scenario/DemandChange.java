package rigmorrow.model.scenario;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import rigmorrow.model.check.Require;

/**
 * Something about what must be photographed that is otherwise. Jobs are drawn from those of the day
 * itself, with a seed, so that every scenario with the same change plans the same jobs. Jobs that
 * are pinned always stay.
 */
public sealed interface DemandChange extends ScenarioChange {

  /**
   * More or fewer jobs. Whole samples are drawn, with all their jobs; the copy of a sample is
   * another sample.
   *
   * @param percent more than there are, or fewer when below 0; -95 to 500
   * @param seed of the draw
   */
  record MoreJobs(double percent, long seed) implements DemandChange {
    /** Least there can be. */
    public static final double LEAST = -95;

    /** Most there can be. */
    public static final double MOST = 500;

    public MoreJobs {
      Require.between("moreJobs.percent", percent, LEAST, MOST);
    }
  }

  /**
   * Another mix. Jobs are drawn one by one, and the copy of each is of a sample of its own.
   *
   * @param factors how many times as many jobs of a recipe, 0 to 100, by its id; at least one
   * @param seed of the draw
   */
  record Mix(Map<String, Double> factors, long seed) implements DemandChange {
    private static final double MOST = 100;

    public Mix {
      factors = Collections.unmodifiableMap(new TreeMap<>(factors));
      Require.that(!factors.isEmpty(), "mix.factors", "empty", "at least one recipe");
      factors.forEach(
          (recipe, factor) -> Require.between("mix.factors[" + recipe + "]", factor, 0, MOST));
    }
  }
}
