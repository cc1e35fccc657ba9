package rigmorrow.model.explain;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.fit.FitReason;

/**
 * What one rig is for a job: impossible, with the reasons, or possible, with the best place on it.
 *
 * @param rig id of the rig
 * @param kind how it stands
 * @param misfits why the rig cannot take the job; empty when it can
 * @param neededSeconds load, capture and unload on this rig; 0 when it cannot take the job
 * @param longestOpenSeconds the longest time the rig is open and staffed in one go
 * @param withoutItsPin true when the places were tried as if the job were not pinned
 * @param placesTried how many places were decoded
 * @param best the cheapest of them; null when none was tried
 */
public record RigAnswer(
    String rig,
    Kind kind,
    List<FitReason> misfits,
    int neededSeconds,
    int longestOpenSeconds,
    boolean withoutItsPin,
    int placesTried,
    @Nullable Move best) {
  public RigAnswer {
    misfits = List.copyOf(misfits);
  }

  /** How a rig stands to a job. */
  public enum Kind {
    /** The job is on it; the best place is the best other one. */
    HERE,
    /** The rig can take it. */
    POSSIBLE,
    /** The rig fails the fit check. */
    MISFIT,
    /** The job is longer than the rig is ever open and staffed in one go. */
    TOO_LONG,
    /** The job is running or done and cannot be moved. */
    FIXED
  }
}
