package rigmorrow.app.terminal;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * Where a command writes. Data goes to {@code out}, progress and errors to {@code err}; nothing is
 * ever read from a terminal.
 *
 * @param out for data
 * @param err for progress and errors
 * @param columns how wide text may be, at least {@link #LEAST_COLUMNS}
 * @param colour true when {@code out} is a terminal that wants colours
 * @param errorColour the same for {@code err}
 * @param redraws true when {@code err} is a terminal on which a line can be drawn again
 */
public record Console(
    PrintStream out,
    PrintStream err,
    int columns,
    boolean colour,
    boolean errorColour,
    boolean redraws) {
  /** Width where no terminal says otherwise. */
  public static final int USUAL_COLUMNS = 80;

  /** Below this nothing sensible can be laid out. */
  public static final int LEAST_COLUMNS = 60;

  private static final int MOST_COLUMNS = 160;

  public Console {
    columns = Math.max(LEAST_COLUMNS, columns);
  }

  /** For files, pipes and tests: 80 columns, no colours, no redrawing. */
  public static Console plain(PrintStream out, PrintStream err) {
    return new Console(out, err, USUAL_COLUMNS, false, false, false);
  }

  /**
   * The console of this process. Text is UTF-8 whatever the locale, so that a redirected document
   * is the same everywhere.
   *
   * @param environment for {@code NO_COLOR} (any value that is not empty), {@code TERM} and {@code
   *     COLUMNS}
   * @param noColour true when a switch forbids colours
   */
  public static Console ofProcess(Map<String, String> environment, boolean noColour) {
    return of(
        stream(FileDescriptor.out),
        stream(FileDescriptor.err),
        Terminals.isTerminal(1),
        Terminals.isTerminal(2),
        environment,
        noColour);
  }

  static Console of(
      PrintStream out,
      PrintStream err,
      boolean outIsTerminal,
      boolean errIsTerminal,
      Map<String, String> environment,
      boolean noColour) {
    boolean dumb = environment.getOrDefault("TERM", "dumb").equals("dumb");
    boolean colours = !noColour && !dumb && environment.getOrDefault("NO_COLOR", "").isEmpty();
    int columns =
        outIsTerminal ? Math.min(MOST_COLUMNS, Terminals.columns(environment)) : USUAL_COLUMNS;
    return new Console(
        out,
        err,
        columns,
        outIsTerminal && colours,
        errIsTerminal && colours,
        errIsTerminal && !dumb);
  }

  /** The text in bold where colours are wanted; plain where not. */
  public String bold(String text) {
    return colour ? "\u001b[1m" + text + "\u001b[0m" : text;
  }

  /**
   * The text as a warning where colours are wanted; plain where not. What it warns of must stand in
   * the text.
   */
  public String warning(String text) {
    return colour ? "\u001b[1;31m" + text + "\u001b[0m" : text;
  }

  private static PrintStream stream(FileDescriptor descriptor) {
    return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
  }
}
