package rigmorrow.model.shot;

import java.time.LocalDate;
import java.util.List;
import rigmorrow.model.check.Require;

/**
 * What must be photographed, and on which days.
 *
 * @param date first day that may be planned
 * @param days how many days may be planned, 1 to 31
 * @param jobs in file order, ids unique; may be empty
 * @param pins decisions and facts that are taken as given, at most one for each job
 */
public record ShotList(LocalDate date, int days, List<ShotJob> jobs, List<Pin> pins) {
  public ShotList {
    Require.between("shotList.days", days, 1, 31);
    jobs = List.copyOf(jobs);
    pins = List.copyOf(pins);
    Require.distinct("shotList.jobs", jobs, ShotJob::id);
    Require.distinct("shotList.pins", pins, Pin::job);
  }

  /** A shot list of the same days with other jobs and no pins. */
  public ShotList withJobs(List<ShotJob> otherJobs) {
    return new ShotList(date, days, otherJobs, List.of());
  }
}
