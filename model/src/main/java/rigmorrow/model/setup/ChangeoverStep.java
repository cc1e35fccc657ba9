package rigmorrow.model.setup;

import java.util.Set;

/**
 * One thing to do in a changeover, as the run sheet shows it.
 *
 * @param text what to do
 * @param attendedSeconds hands-on time after the rig's factor, 0 or more
 * @param unattendedSeconds time that runs on by itself afterwards, 0 or more
 * @param people 1 or 2
 * @param skills what the operator in charge must be able to do
 */
public record ChangeoverStep(
    String text, int attendedSeconds, int unattendedSeconds, int people, Set<String> skills) {
  public ChangeoverStep {
    skills = Set.copyOf(skills);
  }
}
