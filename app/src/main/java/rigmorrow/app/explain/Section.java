package rigmorrow.app.explain;

import java.util.List;

/**
 * Sentences that belong together.
 *
 * @param heading of one line
 * @param sentences at least one
 */
public record Section(String heading, List<String> sentences) {
  public Section {
    sentences = List.copyOf(sentences);
  }
}
