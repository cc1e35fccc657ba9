package rigmorrow.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.samples.Samples;
import rigmorrow.model.floor.Floor;

/**
 * Every sample under {@code broken} has the defects its name says. Beside it stands a list of what
 * must be told: on each line the beginning of the place, a bar, and part of what is accepted.
 */
class BrokenSamplesTest {
  private static final Floor FLOOR = Samples.tinyFloor();

  @ParameterizedTest
  @MethodSource
  void tellsWhatIsWrongWithAFloor(String name) throws Exception {
    Path file = folder("floor").resolve(name);
    assertTold(file, () -> Formats.readFloor(file));
  }

  static Stream<String> tellsWhatIsWrongWithAFloor() throws Exception {
    return samples("floor");
  }

  @ParameterizedTest
  @MethodSource
  void tellsWhatIsWrongWithAShotList(String name) throws Exception {
    Path file = folder("shotlist-json").resolve(name);
    assertTold(file, () -> Formats.readShotList(file, FLOOR));
  }

  static Stream<String> tellsWhatIsWrongWithAShotList() throws Exception {
    return samples("shotlist-json");
  }

  @ParameterizedTest
  @MethodSource
  void tellsWhatIsWrongWithScenarios(String name) throws Exception {
    Path file = folder("scenarios").resolve(name);
    assertTold(file, () -> Formats.readScenarios(file, List.of(Samples.tinyBatch())));
  }

  static Stream<String> tellsWhatIsWrongWithScenarios() throws Exception {
    return samples("scenarios");
  }

  private static void assertTold(Path file, ThrowingCallable reading) throws IOException {
    List<InputProblem> told = catchThrowableOfType(InputException.class, reading).problems();
    String name = file.toString();
    List<String> expected =
        Files.readAllLines(Path.of(name.substring(0, name.lastIndexOf('.')) + ".expected"));
    assertThat(told).as(told.toString()).hasSameSizeAs(expected);
    for (int i = 0; i < expected.size(); i++) {
      String[] parts = expected.get(i).split(" \\| ", 2);
      assertThat(told.get(i).file()).isEqualTo(name);
      assertThat(told.get(i).where()).startsWith(parts[0].strip());
      assertThat(told.get(i).accepted()).contains(parts[1]);
      assertThat(told.get(i).line()).isNotBlank();
    }
  }

  private static Stream<String> samples(String kind) throws Exception {
    try (Stream<Path> files = Files.list(folder(kind))) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> !name.endsWith(".expected"))
          .sorted()
          .toList()
          .stream();
    }
  }

  private static Path folder(String kind) throws URISyntaxException {
    return Path.of(
        Objects.requireNonNull(BrokenSamplesTest.class.getResource("/broken/" + kind)).toURI());
  }
}
