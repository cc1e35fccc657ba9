package rigmorrow.data.shot;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.Place;
import rigmorrow.data.problem.Problems;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.shot.ShotJob;

/** Takes the jobs of one shot list, checks each and sees to it that no id comes twice. */
public final class JobList {
  private final Floor floor;
  private final Problems problems;
  private final List<ShotJob> jobs = new ArrayList<>();
  private final Map<String, Place> placesById = new HashMap<>();

  /**
   * @param floor what recipes and setups are looked up in
   * @param problems takes all that is wrong
   */
  public JobList(Floor floor, Problems problems) {
    this.floor = floor;
    this.problems = problems;
  }

  /**
   * Takes one job, or notes what is wrong with it.
   *
   * @return the job; null where something of its own is wrong
   */
  public @Nullable ShotJob add(JobDraft draft, JobPlace place) {
    if (draft.get(JobField.ID) instanceof String id) {
      Place where = place.where().apply(JobField.ID.key());
      Place earlier = placesById.putIfAbsent(id, where);
      if (earlier != null) {
        String column = place.column().apply(JobField.ID.key());
        problems.add(where, column, id, "an id that no other job has; " + earlier + " has it");
      }
    }
    ShotJob job = draft.toJob(floor, problems, place);
    if (job != null) {
      jobs.add(job);
    }
    return job;
  }

  /** Ids of all jobs taken, those with problems too. */
  public Set<String> ids() {
    return new TreeSet<>(placesById.keySet());
  }

  /** The jobs without problems, in file order. */
  public List<ShotJob> jobs() {
    return List.copyOf(jobs);
  }
}
