package rigmorrow.data.shottable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.table.TableOptions;

class BrokenShotTableTest {

  /** Beside each sample stands what is to be said of it, one line for each problem. */
  @ParameterizedTest
  @MethodSource("samples")
  void tellsEveryProblemOfTheFile(String sample) throws Exception {
    byte[] bytes = Files.readAllBytes(folder().resolve(sample + ".csv"));
    InputException refusal =
        catchThrowableOfType(
            InputException.class, () -> ReadTable.csv(bytes, sample + ".csv", TableOptions.FIND));
    assertThat(refusal).as("refusal of %s", sample).isNotNull();
    String told =
        refusal.problems().stream().map(InputProblem::line).collect(Collectors.joining("\n"));
    String expected =
        Files.readString(folder().resolve(sample + ".expected"), StandardCharsets.UTF_8);
    assertThat(told).isEqualTo(expected.stripTrailing());
  }

  @Test
  void hasASampleForEachExpectation() {
    assertThat(names(".expected")).isEqualTo(names(".csv")).hasSizeGreaterThan(60);
  }

  static Stream<String> samples() {
    return names(".csv").stream();
  }

  private static List<String> names(String ending) {
    try (Stream<Path> files = Files.list(folder())) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(ending))
          .map(name -> name.substring(0, name.length() - ending.length()))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path folder() {
    try {
      return Path.of(
              BrokenShotTableTest.class.getResource("/broken/shotlist-csv/header-only.csv").toURI())
          .getParent();
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }
}
