package rigmorrow.model.explain;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.shot.Pin;

/**
 * What holds for a job wherever it goes. Seconds count from the plan's origin.
 *
 * @param weight how much it counts when late or left out
 * @param arrivesAtSecond from which its sample is there; null when it is there already
 * @param leavesAtSecond by which it must be off the rig; null when the sample stays
 * @param dueAtSecond by which its pictures are promised; null without a promise
 * @param must true when being late breaks the plan
 * @param sampleSharedWith other jobs of its sample, which it must not overlap
 * @param kits ids of the kit it needs on the rig it is on; empty when it is on none
 * @param loadPeople people to load it there; 0 when it is on no rig
 * @param unloadPeople people to unload it there; 0 when it is on no rig
 * @param attendedCapture true when somebody stays during capture
 * @param estimated true when size or mass is the planner's estimate
 * @param pin what it is pinned to; null when it is not
 */
public record JobRules(
    int weight,
    @Nullable Integer arrivesAtSecond,
    @Nullable Integer leavesAtSecond,
    @Nullable Integer dueAtSecond,
    boolean must,
    List<String> sampleSharedWith,
    List<String> kits,
    int loadPeople,
    int unloadPeople,
    boolean attendedCapture,
    boolean estimated,
    @Nullable Pin pin) {
  public JobRules {
    sampleSharedWith = List.copyOf(sampleSharedWith);
    kits = List.copyOf(kits);
  }
}
