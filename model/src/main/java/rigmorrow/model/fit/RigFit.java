package rigmorrow.model.fit;

import java.util.Comparator;
import java.util.List;

/**
 * Whether one rig can take one job.
 *
 * @param rig id of the rig
 * @param reasons every reason why not; empty when it can
 */
public record RigFit(String rig, List<FitReason> reasons) {
  /** Nearest miss first: fewer reasons, then the smaller sum of shortfalls. */
  static final Comparator<RigFit> NEAREST =
      Comparator.<RigFit>comparingInt(fit -> fit.reasons().size())
          .thenComparingDouble(
              fit -> fit.reasons().stream().mapToDouble(FitReason::shortfall).sum());

  public RigFit {
    reasons = List.copyOf(reasons);
  }

  /** True when the rig can take the job. */
  public boolean fits() {
    return reasons.isEmpty();
  }
}
