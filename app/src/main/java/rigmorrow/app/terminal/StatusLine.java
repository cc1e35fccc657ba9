package rigmorrow.app.terminal;

/** One line on standard error that is drawn again and again; silent where that cannot be done. */
public final class StatusLine {
  private final Console console;
  private int drawnColumns;

  /**
   * @param console whose standard error to draw on
   */
  public StatusLine(Console console) {
    this.console = console;
  }

  /** Draws the text in place of what was drawn before. */
  public synchronized void draw(String text) {
    if (!console.redraws()) {
      return;
    }
    // One column less than there are: some terminals break the line after the last one.
    String line = Text.cut(text, console.columns() - 1);
    int columns = Text.columns(line);
    console.err().print("\r" + line + " ".repeat(Math.max(0, drawnColumns - columns)));
    console.err().flush();
    drawnColumns = columns;
  }

  /** Wipes the line, so that what follows starts at the left. */
  public synchronized void clear() {
    if (drawnColumns > 0) {
      console.err().print("\r" + " ".repeat(drawnColumns) + "\r");
      console.err().flush();
      drawnColumns = 0;
    }
  }
}
