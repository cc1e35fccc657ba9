package rigmorrow.model.explain;

import rigmorrow.model.check.Require;

/**
 * Where a job is and when, decoded. All seconds count from the plan's origin.
 *
 * @param rig id of the rig
 * @param place on it, 0 for the first, as in a pin
 * @param of number of jobs on the rig
 * @param startSecond at which its first step starts
 * @param captureEndSecond at which its last picture is taken
 * @param endSecond at which it is off the rig
 * @param changeoverSeconds hands-on changeover before it, 0 or more
 * @param lateSeconds its pictures after its promise, 0 when kept or none given
 */
public record JobTimes(
    String rig,
    int place,
    int of,
    int startSecond,
    int captureEndSecond,
    int endSecond,
    int changeoverSeconds,
    int lateSeconds) {
  public JobTimes {
    Require.that(place >= 0 && place < of, "jobTimes.place", place, "0 to " + (of - 1));
    Require.atLeast("jobTimes.lateSeconds", lateSeconds, 0);
  }
}
