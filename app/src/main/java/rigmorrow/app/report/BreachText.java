package rigmorrow.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rigmorrow.app.terminal.Console;
import rigmorrow.app.terminal.Text;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.Plan;

/** What the independent check found, as text for a terminal. */
public final class BreachText {
  private BreachText() {}

  /** The text, line by line. */
  public static List<String> lines(Plan plan, List<Breach> breaches, Console console) {
    List<String> lines = new ArrayList<>();
    if (breaches.isEmpty()) {
      String jobs = Counted.of(plan.figures().planned(), "planned job");
      String left = plan.figures().leftOut() + " left out";
      lines.addAll(
          Text.wrap(
              "", "", "The plan keeps every rule: " + jobs + ", " + left + ".", console.columns()));
      return lines;
    }
    String count = Counted.of(breaches.size(), "time");
    lines.add(console.warning("The plan breaks rules that must hold, " + count + ":"));
    for (Breach breach : breaches) {
      String rule = breach.rule().name().toLowerCase(Locale.ROOT).replace('_', ' ');
      String text = rule + ", " + breach.where() + ": " + breach.sentence();
      lines.addAll(Text.wrap("  ", "    ", text, console.columns()));
    }
    return lines;
  }
}
