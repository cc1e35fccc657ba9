package rigmorrow.model.work;

import java.util.List;
import java.util.Set;
import rigmorrow.model.setup.Setup;

/**
 * What one job asks for on one rig: the figures that the timeline, the checker and the run sheets
 * all read.
 *
 * @param job id of the job
 * @param rig id of the rig
 * @param request setup values that must be set; what it does not name may stay as it is
 * @param kits ids of the kit it needs here, in floor order; fitted equipment needs none
 * @param load placing and aligning
 * @param captureSeconds taking the pictures, 0 or more
 * @param attendedCapture true when those who load stay during capture
 * @param unload taking the item off
 * @param turns of the plate, rounded up: wear of the plate ring
 * @param terms how the times are made up, in order
 * @param cautions what the crew must mind, defers to local rules
 */
public record JobWork(
    String job,
    String rig,
    Setup request,
    List<String> kits,
    HandsOn load,
    int captureSeconds,
    boolean attendedCapture,
    HandsOn unload,
    int turns,
    List<TimeTerm> terms,
    List<String> cautions) {
  public JobWork {
    kits = List.copyOf(kits);
    terms = List.copyOf(terms);
    cautions = List.copyOf(cautions);
  }

  /**
   * A hands-on part.
   *
   * @param seconds how long, 0 or more
   * @param people 1 or 2
   * @param skills what the one in charge must be able to do
   */
  public record HandsOn(int seconds, int people, Set<String> skills) {
    public HandsOn {
      skills = Set.copyOf(skills);
    }
  }
}
