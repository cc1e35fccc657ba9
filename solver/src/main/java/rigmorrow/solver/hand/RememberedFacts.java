package rigmorrow.solver.hand;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.model.work.JobWork;
import rigmorrow.solver.timeline.JobFacts;

/**
 * Fit and work of the jobs of one floor, worked out when first asked for. They rest on the item,
 * the recipe, the setup and the rig, so a job whose promise, weight or pin changes keeps them. For
 * one thread at a time.
 */
public final class RememberedFacts implements JobFacts {
  private final JobFacts anew;
  private final Map<Asked, Known> known = new HashMap<>();

  /** All of a job that its fit and its work rest on. */
  private record Asked(String job, String recipe, Item item, Setup setup) {
    static Asked of(ShotJob job) {
      return new Asked(job.id(), job.recipe(), job.item(), job.setup());
    }
  }

  private record Known(JobFit fit, Map<String, JobWork> workByRig) {}

  /**
   * @param anew asked for what is not known yet; of one floor
   */
  public RememberedFacts(JobFacts anew) {
    this.anew = anew;
  }

  @Override
  public JobFit fit(ShotJob job) {
    return known(job).fit();
  }

  @Override
  public JobWork work(ShotJob job, Rig rig) {
    return known(job).workByRig().computeIfAbsent(rig.id(), id -> anew.work(job, rig));
  }

  /** Forgets what is not of this list. */
  public void keepOnly(ShotList list) {
    Set<Asked> kept = new HashSet<>();
    list.jobs().forEach(job -> kept.add(Asked.of(job)));
    known.keySet().retainAll(kept);
  }

  /** Number of jobs that are remembered; one that was changed counts twice. */
  public int size() {
    return known.size();
  }

  private Known known(ShotJob job) {
    return known.computeIfAbsent(Asked.of(job), key -> new Known(anew.fit(job), new HashMap<>()));
  }
}
