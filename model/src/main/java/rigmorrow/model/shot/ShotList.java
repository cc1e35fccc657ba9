package rigmorrow.model.shot;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import rigmorrow.model.check.Require;

/**
 * What must be photographed, and on which days.
 *
 * @param date first day that may be planned
 * @param days how many days may be planned, 1 to 31
 * @param jobs in file order, ids unique; may be empty
 * @param pins decisions and facts that are taken as given, at most one for each job
 * @param heldBack ids of jobs that the planner leaves out by hand: no plan does them. Each is a job
 *     of the list, none is pinned
 */
public record ShotList(
    LocalDate date, int days, List<ShotJob> jobs, List<Pin> pins, List<String> heldBack) {
  public ShotList {
    Require.between("shotList.days", days, 1, 31);
    jobs = List.copyOf(jobs);
    pins = List.copyOf(pins);
    heldBack = List.copyOf(heldBack);
    Require.distinct("shotList.jobs", jobs, ShotJob::id);
    Require.distinct("shotList.pins", pins, Pin::job);
    Require.distinct("shotList.heldBack", heldBack, UnaryOperator.identity());
    if (!heldBack.isEmpty()) {
      Set<String> free = new HashSet<>();
      jobs.forEach(job -> free.add(job.id()));
      pins.forEach(pin -> free.remove(pin.job()));
      for (String id : heldBack) {
        Require.that(
            free.contains(id), "shotList.heldBack", id, "a job of the list that is not pinned");
      }
    }
  }

  /** A shot list of which no job is held back. */
  public ShotList(LocalDate date, int days, List<ShotJob> jobs, List<Pin> pins) {
    this(date, days, jobs, pins, List.of());
  }

  /** A shot list of the same days with other jobs, no pins and no job held back. */
  public ShotList withJobs(List<ShotJob> otherJobs) {
    return new ShotList(date, days, otherJobs, List.of());
  }

  /**
   * The same shot list for other days.
   *
   * @param first day that may be planned
   * @param howMany days may be planned, 1 to 31
   */
  public ShotList withDates(LocalDate first, int howMany) {
    return new ShotList(first, howMany, jobs, pins, heldBack);
  }

  /** The same shot list with other pins. */
  public ShotList withPins(List<Pin> otherPins) {
    return new ShotList(date, days, jobs, otherPins, heldBack);
  }

  /** The same shot list with other jobs held back. */
  public ShotList withHeldBack(List<String> others) {
    return new ShotList(date, days, jobs, pins, others);
  }

  /**
   * The same shot list with something else about one job.
   *
   * @param id of the job; where there is none, nothing changes
   */
  public ShotList withJob(String id, UnaryOperator<ShotJob> change) {
    List<ShotJob> changed =
        jobs.stream().map(job -> job.id().equals(id) ? change.apply(job) : job).toList();
    return new ShotList(date, days, changed, pins, heldBack);
  }

  /** A job by its id, if there is one. */
  public Optional<ShotJob> job(String id) {
    return jobs.stream().filter(job -> job.id().equals(id)).findFirst();
  }

  /** What a job is pinned to, if it is. */
  public Optional<Pin> pin(String id) {
    return pins.stream().filter(pin -> pin.job().equals(id)).findFirst();
  }
}
