package rigmorrow.app.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TextTest {

  @ParameterizedTest
  @CsvSource({"lamp,4", "Stehleuchte ä,13", "灯,2", "e\u0301,1"})
  void countsTheColumnsOfATerminal(String text, int columns) {
    assertThat(Text.columns(text)).isEqualTo(columns);
  }

  @Test
  void marksWhatItCuts() {
    assertThat(Text.cut("Floor lamp, brass", 10)).isEqualTo("Floor lam…");
    assertThat(Text.cut("Lamp", 10)).isEqualTo("Lamp");
    assertThat(Text.columns(Text.cut("灯灯灯灯灯灯", 6))).isLessThanOrEqualTo(6);
  }

  @Test
  void keepsATerminalFromTakingNamesForCommands() {
    assertThat(Text.cut("red\u001b[31m\u0007lamp\u009b2J", 40)).isEqualTo("red [31m lamp 2J");
  }

  @Test
  void indentsTheLinesItBreaks() {
    assertThat(Text.wrap("- ", "  ", "one two three", 9))
        .isEqualTo(List.of("- one two", "  three"));
  }

  @Test
  void breaksAWordThatIsTooLong() {
    assertThat(Text.wrap("", "", "abcdefghij", 4)).containsExactly("abcd", "efgh", "ij");
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void wrapsToTheWidthAndLosesNothing(long seed) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 200; i++) {
      text.appendCodePoint(random.nextInt(4) == 0 ? ' ' : random.nextBoolean() ? 'x' : '灯');
    }
    int width = 10 + random.nextInt(30);
    List<String> lines = Text.wrap("* ", "  ", text.toString(), width);
    assertThat(lines).allMatch(line -> Text.columns(line) <= width);
    assertThat(String.join("", lines).replaceAll("[ *]", ""))
        .isEqualTo(text.toString().replace(" ", ""));
  }
}
