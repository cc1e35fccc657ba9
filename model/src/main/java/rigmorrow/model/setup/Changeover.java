package rigmorrow.model.setup;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * All steps from one setup to the next and what they add up to.
 *
 * @param steps in the order they are done
 * @param attendedSeconds hands-on time of the whole changeover: the sum of the steps, or the time
 *     of the longer hand where two steps may run at once
 * @param tailSeconds how long after the hands-on time the last unattended part still runs
 * @param people how many people it takes, 0 when there is nothing to do
 * @param skills what the operator in charge must be able to do
 */
public record Changeover(
    List<ChangeoverStep> steps,
    int attendedSeconds,
    int tailSeconds,
    int people,
    Set<String> skills) {
  /** Nothing to do. */
  public static final Changeover NONE = new Changeover(List.of(), 0, 0, 0, Set.of());

  public Changeover {
    steps = List.copyOf(steps);
    skills = Set.copyOf(skills);
  }

  /**
   * Adds steps up. One operator does them one after the other. Where the rig allows two at once and
   * there is more than one step, two people share them in the given order, each step to the hand
   * that is free first (list scheduling), so that the longer hand gives the time.
   */
  public static Changeover of(List<ChangeoverStep> steps, boolean twoAtOnce) {
    if (steps.isEmpty()) {
      return NONE;
    }
    boolean share = twoAtOnce && steps.size() > 1;
    int[] handSeconds = new int[2];
    int tailEnd = 0;
    int people = share ? 2 : 1;
    Set<String> skills = new TreeSet<>();
    for (ChangeoverStep step : steps) {
      int hand = share && handSeconds[1] < handSeconds[0] ? 1 : 0;
      boolean bothHands = share && step.people() == 2;
      int start = bothHands ? Math.max(handSeconds[0], handSeconds[1]) : handSeconds[hand];
      int end = start + step.attendedSeconds();
      handSeconds[hand] = end;
      if (bothHands) {
        handSeconds[1 - hand] = end;
      }
      if (step.unattendedSeconds() > 0) {
        tailEnd = Math.max(tailEnd, end + step.unattendedSeconds());
      }
      people = Math.max(people, step.people());
      skills.addAll(step.skills());
    }
    int attended = Math.max(handSeconds[0], handSeconds[1]);
    return new Changeover(steps, attended, Math.max(0, tailEnd - attended), people, skills);
  }
}
