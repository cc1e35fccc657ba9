package rigmorrow.solver;

import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.solver.hand.Places;
import rigmorrow.solver.hand.RememberedFacts;
import rigmorrow.solver.hand.Timed;
import rigmorrow.solver.hand.Trial;
import rigmorrow.solver.timeline.JobFacts;

/**
 * Times orders that somebody gives by hand. It remembers what it worked out of each job, so that
 * the next orders of the same jobs, or of jobs with other pins, promises or weights, are quick. Any
 * thread may ask; one is served at a time.
 */
public final class HandTimer {
  /** How many jobs are remembered, as a multiple of those of the list at hand. */
  private static final int MOST_LISTS = 3;

  private final Floor floor;
  private final RememberedFacts facts;
  private @Nullable Trial last;

  /**
   * @param floor whose batches are timed
   */
  public HandTimer(Floor floor) {
    this.floor = floor;
    this.facts = new RememberedFacts(JobFacts.of(floor));
  }

  /** The floor whose batches are timed. */
  public Floor floor() {
    return floor;
  }

  /**
   * Every time of orders, and what they cost.
   *
   * @param batch of this timer's floor
   * @param orders of jobs of the batch, each at most once; jobs in none are left out
   * @param origin how the orders came about
   * @throws IllegalArgumentException when the batch is of another floor, or the orders have a job
   *     that cannot be planned, or on a rig that cannot take it
   */
  public synchronized Timed time(Batch batch, Orders orders, PlanOrigin origin) {
    return trial(batch).decode(orders, origin);
  }

  /** What every rig says to a job. */
  public synchronized JobFit fit(ShotJob job) {
    return facts.fit(job);
  }

  /**
   * How much longer a job takes on a rig, alone and without a changeover, than the rig is open and
   * staffed in one go.
   *
   * @param batch that is planned, with the job not held back
   * @param rig number of a rig that passes the fit check
   * @return seconds of the job and of the rig's longest opening
   */
  public synchronized Room room(Batch batch, int rig, String job) {
    Trial trial = trial(batch);
    return new Room(trial.neededSeconds(rig, job), trial.longestOpenSeconds(rig));
  }

  /**
   * Whether a rig is open for long enough.
   *
   * @param neededSeconds load, capture and unload of a job
   * @param longestOpenSeconds the longest time for which the rig is open and staffed in one go
   */
  public record Room(int neededSeconds, int longestOpenSeconds) {
    /** True when the job could end within the rig's hours. */
    public boolean enough() {
      return neededSeconds <= longestOpenSeconds;
    }
  }

  /**
   * The orders with one more job where it costs least; every place is decoded.
   *
   * @param orders without the job
   * @return null when no rig takes it
   */
  public synchronized @Nullable Orders cheapest(Batch batch, Orders orders, String job) {
    Set<String> fixed = new HashSet<>();
    for (Pin pin : batch.shotList().pins()) {
      if (pin.state() != PinState.PLANNED) {
        fixed.add(pin.job());
      }
    }
    return new Places(trial(batch), orders, job, fixed).everywhere().best();
  }

  private Trial trial(Batch batch) {
    Trial known = last;
    if (known != null && known.batch().equals(batch)) {
      return known;
    }
    if (!batch.floor().equals(floor)) {
      throw new IllegalArgumentException(
          "batch is of another floor than " + floor.name() + "; accepted: one of this floor");
    }
    Trial made = new Trial(batch, facts);
    if (facts.size() > MOST_LISTS * batch.shotList().jobs().size()) {
      facts.keepOnly(batch.shotList());
    }
    last = made;
    return made;
  }
}
