package rigmorrow.app;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import org.junit.jupiter.api.Test;

class MainTest {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  private int run(String... args) {
    PrintStream stream = new PrintStream(out, true, UTF_8);
    return Main.run(args, stream, stream);
  }

  @Test
  void printsHelp() {
    assertThat(run("--help")).isZero();
    assertThat(out.toString(UTF_8)).contains("Usage: rigmorrow").contains("--version");
  }

  @Test
  void printsTheVersionOfTheBuild() {
    assertThat(run("--version")).isZero();
    assertThat(out.toString(UTF_8)).matches("rigmorrow \\d+\\.\\d+\\.\\d+(-SNAPSHOT)?\\R");
  }

  @Test
  void saysWhatThereIsWithoutACommand() {
    assertThat(run()).isZero();
    assertThat(out.toString(UTF_8)).contains("Commands:", "demo", "plan", "fit", "times", "verify");
  }
}
