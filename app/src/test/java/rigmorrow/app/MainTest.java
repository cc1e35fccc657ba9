package rigmorrow.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class MainTest {

  private final StringWriter out = new StringWriter();

  private int run(String... args) {
    return new CommandLine(new Main()).setOut(new PrintWriter(out, true)).execute(args);
  }

  @Test
  void printsHelp() {
    assertThat(run("--help")).isZero();
    assertThat(out.toString()).contains("Usage: rigmorrow").contains("--version");
  }

  @Test
  void printsTheVersionOfTheBuild() {
    assertThat(run("--version")).isZero();
    assertThat(out.toString()).matches("rigmorrow \\d+\\.\\d+\\.\\d+(-SNAPSHOT)?\\R");
  }
}
