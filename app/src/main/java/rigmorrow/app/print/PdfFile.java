package rigmorrow.app.print;

import java.util.Set;

/**
 * A PDF file and what it cannot show.
 *
 * @param bytes of the file
 * @param unprintable letters that have no shape in our fonts and are printed as an empty box
 */
public record PdfFile(byte[] bytes, Set<String> unprintable) {
  public PdfFile {
    unprintable = Set.copyOf(unprintable);
  }

  /** What to tell of the letters that are missing; empty when none is. */
  public String note() {
    if (unprintable.isEmpty()) {
      return "";
    }
    int shown = 12;
    String letters = String.join(" ", unprintable.stream().sorted().limit(shown).toList());
    return "letters that the PDF cannot show and prints as an empty box: "
        + letters
        + (unprintable.size() > shown ? " … (" + unprintable.size() + " in all)" : "")
        + "; an HTML file has them";
  }
}
