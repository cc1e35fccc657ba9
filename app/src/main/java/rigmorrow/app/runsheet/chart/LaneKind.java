package rigmorrow.app.runsheet.chart;

import rigmorrow.app.print.Drawing;

/** What the time of a rig or an operator goes into, each kind with a pattern of its own. */
public enum LaneKind {
  CHANGEOVER("Changeover", Pattern.SLANTED, true),
  WARM_UP("Warm-up", Pattern.LEVEL, true),
  LOAD("Load", Pattern.FULL, true),
  CAPTURE("Capture", Pattern.UPRIGHT, true),
  UNLOAD("Unload", Pattern.HALF, true),
  WAIT("Rig waits", Pattern.EMPTY, true),
  BREAK("Break", Pattern.CROSSED, false),
  CLOSED("Closed", Pattern.DOTTED, false);

  private static final double MARGIN = 3;
  private static final double LINE = 1.6;
  private static final double GAP = 7;
  private static final double NARROWEST = 3;

  private final String label;
  private final Pattern pattern;
  private final boolean work;

  private enum Pattern {
    FULL,
    HALF,
    EMPTY,
    SLANTED,
    UPRIGHT,
    LEVEL,
    CROSSED,
    DOTTED
  }

  LaneKind(String label, Pattern pattern, boolean work) {
    this.label = label;
    this.pattern = pattern;
    this.work = work;
  }

  /** What it is called beside its lane. */
  public String label() {
    return label;
  }

  /** Whether the rig or the operator is at work then. */
  boolean work() {
    return work;
  }

  /** Draws a bar; one that lasts no time to speak of is still wide enough to be seen. */
  public void draw(Drawing drawing, double from, double to, double laneHeight) {
    double width = Math.max(NARROWEST, to - from);
    double height = laneHeight - 2 * MARGIN;
    drawing.outline(from, MARGIN, width, height, LINE);
    switch (pattern) {
      case FULL -> drawing.rectangle(from, MARGIN, width, height);
      case HALF -> drawing.rectangle(from, MARGIN + height / 2, width, height / 2);
      case EMPTY -> {}
      case SLANTED -> slanted(drawing, from, width, height);
      case UPRIGHT -> upright(drawing, from, width, height);
      case LEVEL -> level(drawing, from, width, height);
      case DOTTED -> dotted(drawing, from, width, height);
      case CROSSED -> {
        upright(drawing, from, width, height);
        level(drawing, from, width, height);
      }
    }
  }

  /** Lines at 45 degrees, each cut to where it is within the bar. */
  private static void slanted(Drawing drawing, double from, double width, double height) {
    double bottom = MARGIN + height;
    for (double start = GAP - height; start < width - LINE; start += GAP) {
      double low = Math.max(0, -start);
      double high = Math.min(height, width - LINE - start);
      if (low < high) {
        double left = from + start + low;
        double right = from + start + high;
        drawing.shape(
            right,
            bottom - high,
            right + LINE,
            bottom - high,
            left + LINE,
            bottom - low,
            left,
            bottom - low);
      }
    }
  }

  private static void upright(Drawing drawing, double from, double width, double height) {
    for (double x = GAP; x < width - LINE; x += GAP) {
      drawing.rectangle(from + x, MARGIN, LINE, height);
    }
  }

  private static void level(Drawing drawing, double from, double width, double height) {
    for (double y = GAP; y < height - LINE; y += GAP) {
      drawing.rectangle(from, MARGIN + y, width, LINE);
    }
  }

  private static void dotted(Drawing drawing, double from, double width, double height) {
    for (double x = GAP; x < width - LINE; x += GAP) {
      for (double y = GAP / 2; y < height - LINE; y += GAP) {
        drawing.rectangle(from + x, MARGIN + y, LINE, LINE);
      }
    }
  }
}
