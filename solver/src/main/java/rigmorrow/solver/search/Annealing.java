package rigmorrow.solver.search;

import java.time.Duration;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.phase.custom.CustomPhaseCommand;
import rigmorrow.solver.timeline.RigWalk;
import rigmorrow.solver.timeline.Sequences;

/**
 * Simulated annealing over primitive queues, as a phase of the planning library: it takes the
 * working solution over, tries changes, and hands the best plan back.
 */
final class Annealing implements CustomPhaseCommand<FloorSchedule> {
  /** Temperature and clock are looked at once in so many changes. */
  private static final int STRIDE = 32;

  private final long begin;
  private final @Nullable Duration time;
  private final long decodes;
  private final SplittableRandom random;
  private long judged;
  private final BooleanSupplier stopped;
  private final Consumer<Sequences> onBetter;

  /**
   * @param begin {@link System#nanoTime()} at which the time began to run
   * @param time wall time; null for none
   * @param decodes 0 for none
   * @param stopped asked often; true ends the search
   * @param onBetter told of every better plan
   */
  Annealing(
      long begin,
      @Nullable Duration time,
      long decodes,
      long seed,
      BooleanSupplier stopped,
      Consumer<Sequences> onBetter) {
    this.begin = begin;
    this.time = time;
    this.decodes = decodes;
    this.random = new SplittableRandom(seed);
    this.stopped = stopped;
    this.onBetter = onBetter;
  }

  @Override
  public void changeWorkingSolution(ScoreDirector<FloorSchedule> director) {
    FloorSchedule schedule = director.getWorkingSolution();
    schedule.write(director, search(schedule));
  }

  /** Number of changes judged so far. */
  long judged() {
    return judged;
  }

  private Sequences search(FloorSchedule schedule) {
    Effort effort = new Effort(begin, time, decodes);
    WorkQueues queues = new WorkQueues(schedule.batch(), schedule.timeline());
    TroubleSpots troubles = new TroubleSpots(schedule.batch(), schedule.timeline());
    RigWalk walk = new RigWalk(schedule.batch(), schedule.timeline());
    Judge judge = new Judge(schedule.batch(), schedule.timeline(), queues, troubles, walk, random);
    ChangeDraw draw =
        new ChangeDraw(schedule.batch(), schedule.neighbours(), queues, troubles, walk, random);
    Change change = new Change();
    judge.standAt(schedule.sequences());
    Sequences best = judge.plan();
    Heat heat = Heat.measure(judge, draw, change, decodes);
    double spent = effort.spent(judge);
    int rounds = Rounds.count(effort.expectedDecodes(judge), schedule.batch().jobCount());
    while (spent < 1 && !stopped.getAsBoolean()) {
      double temperature = heat.at(Rounds.spentOfRound(spent, rounds));
      for (int i = 0; i < STRIDE; i++) {
        if (!draw.draw(change)) {
          return best;
        }
        if (judge.keeps(change, allowance(temperature)) && judge.betterThan(best)) {
          best = judge.plan();
          onBetter.accept(best);
        }
      }
      judged = judge.judged();
      double before = spent;
      spent = effort.spent(judge);
      if (spent >= 1) {
        return best;
      }
      if (Rounds.number(before, rounds) < Rounds.number(spent, rounds)) {
        judge.standAt(Ruin.of(best, schedule.batch(), random));
      }
    }
    return best;
  }

  /** The rule of Metropolis, drawn first: a loss is allowed with odds exp(-loss / temperature). */
  private long allowance(double temperature) {
    return (long) (-temperature * StrictMath.log(1 - random.nextDouble()));
  }
}
