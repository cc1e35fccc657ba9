package rigmorrow.app.explain;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.app.report.Counted;
import rigmorrow.app.report.PlanText;
import rigmorrow.app.terminal.Console;
import rigmorrow.app.terminal.Text;
import rigmorrow.model.explain.Trouble;

/** Explanations as text for a terminal. */
public final class ExplainText {
  private final ExplainSentences sentences;
  private final Console console;

  /**
   * @param sentences of the batch
   * @param console how wide and whether in colour
   */
  public ExplainText(ExplainSentences sentences, Console console) {
    this.sentences = sentences;
    this.console = console;
  }

  /** Sections of sentences, line by line. */
  public List<String> lines(List<Section> sections) {
    List<String> lines = new ArrayList<>();
    for (Section section : sections) {
      if (!lines.isEmpty()) {
        lines.add("");
      }
      lines.add(console.bold(Text.cut(section.heading(), console.columns())));
      section.sentences().forEach(sentence -> wrapped(lines, sentence));
    }
    advice(lines);
    return lines;
  }

  /** Jobs that are late or left out, a few words each. */
  public List<String> troubles(List<Trouble> troubles) {
    List<String> lines = new ArrayList<>();
    if (troubles.isEmpty()) {
      lines.add("No job is late and none is left out.");
    } else {
      String jobs = Counted.of(troubles.size(), "job");
      lines.add(console.bold(jobs + " late or left out; --job ID says more about one."));
    }
    troubles.forEach(trouble -> wrapped(lines, sentences.of(trouble)));
    advice(lines);
    return lines;
  }

  private void wrapped(List<String> lines, String sentence) {
    lines.addAll(Text.wrap("  ", "    ", sentence, console.columns()));
  }

  private void advice(List<String> lines) {
    lines.add("");
    lines.addAll(Text.wrap("", "", PlanText.ADVICE, console.columns()));
  }
}
