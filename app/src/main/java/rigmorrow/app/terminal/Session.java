package rigmorrow.app.terminal;

import java.nio.file.Path;
import java.time.Clock;

/**
 * What one run of the program works with.
 *
 * @param console where to write
 * @param stop how a search is ended early
 * @param clock tells today
 * @param folder that paths on the command line start from
 */
public record Session(Console console, EarlyStop stop, Clock clock, Path folder) {

  /** Prints data. */
  public void print(Iterable<String> lines) {
    lines.forEach(console.out()::println);
  }

  /** Prints a line that is no data. */
  public void note(String text) {
    console.err().println(text);
  }
}
