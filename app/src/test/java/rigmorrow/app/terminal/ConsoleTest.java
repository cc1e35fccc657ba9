package rigmorrow.app.terminal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ConsoleTest {
  private static final Map<String, String> XTERM = Map.of("TERM", "xterm", "COLUMNS", "100");

  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @Test
  void coloursOnATerminalOnly() {
    assertThat(console(true, XTERM, false).colour()).isTrue();
    assertThat(console(false, XTERM, false).colour()).isFalse();
  }

  @Test
  void respectsNoColorTheDumbTerminalAndTheSwitch() {
    Map<String, String> noColor = Map.of("TERM", "xterm", "COLUMNS", "100", "NO_COLOR", "1");
    Map<String, String> dumb = Map.of("TERM", "dumb", "COLUMNS", "100");
    assertThat(console(true, noColor, false).colour()).isFalse();
    assertThat(console(true, dumb, false).colour()).isFalse();
    assertThat(console(true, XTERM, true).colour()).isFalse();
    assertThat(console(true, noColor, false).warning("late")).isEqualTo("late");
  }

  @Test
  void takesAnEmptyNoColorForNotSet() {
    Map<String, String> empty = Map.of("TERM", "xterm", "COLUMNS", "100", "NO_COLOR", "");
    assertThat(console(true, empty, false).colour()).isTrue();
  }

  @Test
  void isWiderThan80OnlyWhereATerminalSaysSo() {
    assertThat(console(true, XTERM, false).columns()).isEqualTo(100);
    assertThat(console(false, XTERM, false).columns()).isEqualTo(80);
  }

  @Test
  void redrawsOnATerminalThatCan() {
    draw(console(true, XTERM, false));
    assertThat(err.toString(UTF_8)).isEqualTo("\rlonger line\rshort      \r     \r");
  }

  @Test
  void drawsNothingInAPipeOrOnADumbTerminal() {
    draw(console(false, XTERM, false));
    draw(console(true, Map.of("TERM", "dumb"), false));
    assertThat(err.size()).isZero();
  }

  private static void draw(Console console) {
    StatusLine line = new StatusLine(console);
    line.draw("longer line");
    line.draw("short");
    line.clear();
  }

  private Console console(boolean terminal, Map<String, String> environment, boolean noColour) {
    PrintStream stream = new PrintStream(err, true, UTF_8);
    return Console.of(stream, stream, terminal, terminal, environment, noColour);
  }
}
