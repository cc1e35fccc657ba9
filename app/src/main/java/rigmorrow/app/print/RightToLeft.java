package rigmorrow.app.print;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Puts Hebrew and Arabic words into the order in which they are read, with the JDK's Unicode
 * bidirectional algorithm. Arabic letters are not joined.
 */
final class RightToLeft implements BidiReorderer {
  private static final String OPENING = "([{<«";
  private static final String CLOSING = ")]}>»";

  /** Whether a text has words that run from right to left. */
  static boolean isIn(String text) {
    char[] letters = text.toCharArray();
    return Bidi.requiresBidi(letters, 0, letters.length);
  }

  @Override
  public String reorderRTLTextToLTR(String text) {
    Bidi bidi = new Bidi(text, Bidi.DIRECTION_RIGHT_TO_LEFT);
    List<String> clusters = new ArrayList<>();
    BreakIterator breaks = BreakIterator.getCharacterInstance(Locale.ROOT);
    breaks.setText(text);
    int start = breaks.first();
    for (int end = breaks.next(); end != BreakIterator.DONE; start = end, end = breaks.next()) {
      clusters.add(text.substring(start, end));
    }
    byte[] levels = new byte[clusters.size()];
    int at = 0;
    for (int i = 0; i < levels.length; i++) {
      levels[i] = (byte) bidi.getLevelAt(at);
      at += clusters.get(i).length();
    }
    Object[] shown = new Object[levels.length];
    for (int i = 0; i < shown.length; i++) {
      shown[i] = levels[i] % 2 == 0 ? clusters.get(i) : mirrored(clusters.get(i));
    }
    Bidi.reorderVisually(levels, 0, shown, 0, shown.length);
    StringBuilder ordered = new StringBuilder(text.length());
    for (Object cluster : shown) {
      ordered.append(cluster);
    }
    return ordered.toString();
  }

  private static String mirrored(String cluster) {
    int opening = OPENING.indexOf(cluster);
    int closing = CLOSING.indexOf(cluster);
    if (opening >= 0) {
      return CLOSING.substring(opening, opening + 1);
    }
    return closing >= 0 ? OPENING.substring(closing, closing + 1) : cluster;
  }

  @Override
  public String shapeText(String text) {
    return text;
  }

  @Override
  public String deshapeText(String text) {
    return text;
  }

  @Override
  public boolean isLiveImplementation() {
    return true;
  }

  /**
   * Finds the runs of one direction in a paragraph. Our lines all run from left to right; numbers
   * within what runs from right to left stay with it, or they would end up on its other side.
   */
  static final class Splitter implements BidiSplitter {
    private final List<BidiTextRun> runs = new ArrayList<>();

    @Override
    public void setParagraph(String paragraph, byte direction) {
      runs.clear();
      Bidi bidi = new Bidi(paragraph, Bidi.DIRECTION_LEFT_TO_RIGHT);
      int start = 0;
      for (int run = 0; run < bidi.getRunCount(); run++) {
        boolean last = run + 1 == bidi.getRunCount();
        boolean turned = bidi.getRunLevel(run) > 0;
        if (last || bidi.getRunLevel(run + 1) > 0 != turned) {
          runs.add(new BidiTextRun(start, bidi.getRunLimit(run) - start, turned ? RTL : LTR));
          start = bidi.getRunLimit(run);
        }
      }
    }

    @Override
    public int countTextRuns() {
      return runs.size();
    }

    @Override
    public BidiTextRun getVisualRun(int run) {
      return runs.get(run);
    }

    @Override
    public byte getBaseDirection(String paragraph) {
      return LTR;
    }
  }
}
