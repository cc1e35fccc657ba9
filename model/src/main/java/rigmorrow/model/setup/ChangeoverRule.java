package rigmorrow.model.setup;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.check.Require;

/**
 * One line of a changeover table: what it takes to bring one attribute from one value to another.
 * The table is asymmetric. {@code *} stands for any value; of several lines that apply the most
 * specific wins (named rigs, then a named target, then a named origin), then the first.
 *
 * @param attribute the setup attribute
 * @param from value id or {@code *}
 * @param to value id or {@code *}
 * @param rigs rig ids this line is for; empty means every rig
 * @param attendedSeconds hands-on time, 0 or more, before the rig's own factor
 * @param unattendedSeconds time that runs on by itself after the hands-on time (warm-up, drying), 0
 *     or more; loading may go on meanwhile, capture may not
 * @param people 1 or 2
 * @param skills what the operator in charge must be able to do
 * @param step what the run sheet says, in which {@value #FROM} and {@value #TO} stand for the names
 *     of the two values; null for a plain "attribute: from to to"
 */
public record ChangeoverRule(
    String attribute,
    String from,
    String to,
    Set<String> rigs,
    int attendedSeconds,
    int unattendedSeconds,
    int people,
    Set<String> skills,
    @Nullable String step) {
  /** Stands for any value. */
  public static final String ANY = "*";

  /** Stands in a step for what people call the value that is set up before. */
  public static final String FROM = "{from}";

  /** Stands in a step for what people call the value that is set up then. */
  public static final String TO = "{to}";

  private static final Pattern NAMES = Pattern.compile("\\{(from|to)}");

  public ChangeoverRule {
    Require.text("changeover.attribute", attribute);
    Require.text("changeover.from", from);
    Require.text("changeover.to", to);
    rigs = Set.copyOf(rigs);
    Require.atLeast("changeover.attendedSeconds", attendedSeconds, 0);
    Require.atLeast("changeover.unattendedSeconds", unattendedSeconds, 0);
    Require.that(people == 1 || people == 2, "changeover.people", people, "1 or 2");
    skills = Set.copyOf(skills);
  }

  /** True when this line applies to that change on that rig. */
  public boolean applies(String rigId, String fromValue, String toValue) {
    return (rigs.isEmpty() || rigs.contains(rigId))
        && (from.equals(ANY) || from.equals(fromValue))
        && (to.equals(ANY) || to.equals(toValue));
  }

  /** How specific the line is: a line with a higher number goes before one with a lower. */
  public int specificity() {
    return (rigs.isEmpty() ? 0 : 4) + (to.equals(ANY) ? 0 : 2) + (from.equals(ANY) ? 0 : 1);
  }

  /** A step with names put in. A name that looks like a place to put one stays as it is. */
  public static String named(String step, String from, String to) {
    return NAMES
        .matcher(step)
        .replaceAll(hit -> Matcher.quoteReplacement(hit.group(1).equals("from") ? from : to));
  }
}
