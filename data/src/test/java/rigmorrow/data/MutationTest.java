package rigmorrow.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigmorrow.data.floor.FloorReader;
import rigmorrow.data.floor.FloorWriter;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.samples.Samples;
import rigmorrow.data.scenario.ScenarioReader;
import rigmorrow.data.scenario.ScenarioWriter;
import rigmorrow.data.shotjson.ShotJsonReader;
import rigmorrow.data.shotjson.ShotJsonWriter;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.shot.Batch;

/** Whatever happens to a file, it is read or refused with its problems; nothing else comes out. */
class MutationTest {
  private static final int ROUNDS = 500;
  private static final Pattern TOKEN = Pattern.compile("\"[^\"\\n]*\"|[\\w.-]+|[{}\\[\\],:]");
  private static final List<String> STRANGE =
      List.of(
          "null",
          "true",
          "[]",
          "{}",
          "\"\"",
          "\" \"",
          "-1",
          "0",
          "1e999",
          "-1e-999",
          "NaN",
          ".nan",
          ".inf",
          "99999999999999999999999",
          "1.5",
          "\"x\"",
          "[[[[]]]]",
          "{\"a\": {\"a\": 1}}",
          "\"9999-99-99T99:99\"",
          "\"+999999999-12-31\"",
          "*a",
          "&a",
          "!!int",
          "---",
          "\u0000",
          "\"\\uD800\"",
          "\"24:00\"",
          "<<",
          "? ",
          "\t",
          "2147483647",
          "-2147483648");

  private final Floor floor = Samples.tinyFloor();

  @ParameterizedTest
  @EnumSource(Trees.Notation.class)
  void readsOrRefusesAnyFloorFile(Trees.Notation notation) {
    String text = FloorWriter.write(floor, notation);
    mutate(text, 1, mutant -> FloorReader.read("mutant", mutant, notation));
  }

  @ParameterizedTest
  @EnumSource(Trees.Notation.class)
  void readsOrRefusesAnyShotList(Trees.Notation notation) {
    String text = ShotJsonWriter.write(Samples.tinyShots(), notation);
    mutate(text, 2, mutant -> ShotJsonReader.read("mutant", mutant, notation, floor));
  }

  @ParameterizedTest
  @EnumSource(Trees.Notation.class)
  void readsOrRefusesAnyScenarios(Trees.Notation notation) {
    List<Batch> batches = List.of(Samples.tinyBatch());
    String text = ScenarioWriter.write(Samples.tinyScenarios(), 5, notation);
    mutate(text, 3, mutant -> ScenarioReader.read("mutant", mutant, notation, batches));
  }

  private interface Reader {
    Object read(String text) throws InputException;
  }

  private static void mutate(String text, long seed, Reader reader) {
    Random random = new Random(seed);
    int refused = 0;
    for (int round = 0; round < ROUNDS; round++) {
      String mutant = mutant(text, random);
      try {
        assertThat(reader.read(mutant)).isNotNull();
      } catch (InputException e) {
        assertThat(e.problems()).isNotEmpty();
        assertThat(e.problems()).allSatisfy(p -> assertThat(p.accepted()).isNotBlank());
        assertThat(e.problems()).doesNotHaveDuplicates();
        // A table can lack several changeovers; nothing else is told twice of one value.
        assertThat(e.problems())
            .filteredOn(problem -> !problem.where().equals("changeovers"))
            .extracting(problem -> problem.where() + " " + problem.value())
            .doesNotHaveDuplicates();
        refused++;
      } catch (RuntimeException | Error e) {
        throw new AssertionError("Round " + round + ":\n" + mutant, e);
      }
    }
    assertThat(refused).isGreaterThan(ROUNDS / 4);
  }

  private static String mutant(String text, Random random) {
    String mutant = text;
    for (int change = random.nextInt(3); change >= 0; change--) {
      mutant =
          switch (random.nextInt(5)) {
            case 0 -> flipped(mutant, random);
            case 1 -> mutant.substring(0, random.nextInt(mutant.length()) + 1);
            case 2 -> swapped(mutant, random);
            case 3 -> withToken(mutant, STRANGE.get(random.nextInt(STRANGE.size())), random);
            default -> withoutLine(mutant, random);
          };
    }
    return mutant;
  }

  private static String flipped(String text, Random random) {
    int at = random.nextInt(text.length());
    char other = (char) (text.charAt(at) ^ (1 << random.nextInt(8)));
    return text.substring(0, at) + other + text.substring(at + 1);
  }

  private static String swapped(String text, Random random) {
    Matcher one = token(text, random);
    return withToken(text, one == null ? "" : one.group(), random);
  }

  private static String withToken(String text, String token, Random random) {
    Matcher other = token(text, random);
    return other == null
        ? token
        : text.substring(0, other.start()) + token + text.substring(other.end());
  }

  private static Matcher token(String text, Random random) {
    Matcher matcher = TOKEN.matcher(text);
    return matcher.find(random.nextInt(text.length())) || matcher.find(0) ? matcher : null;
  }

  private static String withoutLine(String text, Random random) {
    int at = random.nextInt(text.length());
    int start = text.lastIndexOf('\n', at) + 1;
    int end = text.indexOf('\n', at);
    String less = text.substring(0, start) + (end < 0 ? "" : text.substring(end));
    return less.isEmpty() ? "x" : less;
  }
}
