package rigmorrow.data.floor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.samples.Samples;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.setup.SetupAttribute;

class ChangeoverCoverageTest {
  private static final Rig RIG = Samples.tinyFloor().rigs().get(0);

  /** The definition, word for word: no line applies to a change that a rig can come to need. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void tellsExactlyTheChangesWithoutALine(long seed) {
    Random random = new Random(seed);
    List<SetupAttribute> attributes = List.of(attribute("a", 5), attribute("b", 3));
    List<Rig> rigs = List.of(rig("r0", random), rig("r1", random), rig("r2", random));
    List<ChangeoverRule> rules = new ArrayList<>();
    for (int rule = 0; rule < 25; rule++) {
      rules.add(rule(random));
    }
    List<String> expected = new ArrayList<>();
    for (SetupAttribute attribute : attributes) {
      for (AttributeValue from : attribute.values()) {
        for (AttributeValue to : attribute.values()) {
          String without =
              rigs.stream()
                  .filter(rig -> lacks(rig, attribute.id(), from.id(), to.id(), rules))
                  .map(Rig::id)
                  .collect(Collectors.joining(", "));
          if (!without.isEmpty()) {
            expected.add(
                "a line for %s from %s to %s on %s (from * to * covers all)"
                    .formatted(attribute.id(), from.id(), to.id(), without));
          }
        }
      }
    }
    Problems problems = new Problems("test");
    ChangeoverCoverage.check(attributes, rules, rigs, problems);
    assertThat(problems.all()).extracting(InputProblem::accepted).isEqualTo(expected);
    assertThat(expected).isNotEmpty();
  }

  private static boolean lacks(
      Rig rig, String attribute, String from, String to, List<ChangeoverRule> rules) {
    return !from.equals(to)
        && rig.offers(attribute, from)
        && rig.offers(attribute, to)
        && rules.stream()
            .noneMatch(
                rule -> rule.attribute().equals(attribute) && rule.applies(rig.id(), from, to));
  }

  /**
   * Textbook instances have a changeover time for every pair of jobs, some for every machine. Work
   * that grows with pairs times lines would take hours here; a minute leaves room for any machine.
   */
  @Test
  @Timeout(value = 60, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
  void readsATableForEveryPairOfManyValues() throws Exception {
    Floor floor = FloorReader.read("many", manyPairs(250, 30), Trees.Notation.YAML);
    assertThat(floor.changeovers()).hasSize(250 * 249 + 1);
    assertThat(floor.rigs()).hasSize(30);
  }

  /** Each pair has a line for one rig; the other rigs have a line for all. */
  private static String manyPairs(int values, int rigs) {
    String tiny = Samples.text("tiny-floor.yaml");
    StringBuilder text = new StringBuilder("version: 1\nname: many\nzone: UTC\nattributes:\n");
    text.append("  - id: part\n    values:\n");
    IntStream.range(0, values).forEach(v -> text.append("      - {id: v%d}\n".formatted(v)));
    text.append("changeovers:\n");
    String line = "  - {attribute: part, from: %s, to: %s, attendedSeconds: %d%s}\n";
    for (int from = 0; from < values; from++) {
      for (int to = 0; to < values; to++) {
        if (from != to) {
          String rig = ", rigs: [m%d]".formatted((from + to) % rigs);
          text.append(line.formatted("v" + from, "v" + to, (from * 7 + to) % 100, rig));
        }
      }
    }
    text.append(line.formatted("'*'", "'*'", 60, "")).append("rigs:\n");
    String rig = tiny.substring(tiny.indexOf("  - id: t2\n"), tiny.indexOf("\nkits:"));
    String bare =
        rig.replaceAll("(?m)^    (offers|captureFactors|takesKit): .*\n", "")
            .replaceAll("initialSetup: .*", "initialSetup: {part: v0}");
    IntStream.range(0, rigs).forEach(r -> text.append(bare.replace("id: t2", "id: m" + r)));
    text.append("\ncrew:\n  - {id: one, shifts: [{from: \"00:00\", to: \"00:00\"}]}\n");
    text.append("recipes:\n  - {id: any, exposureSeconds: 0, measuredCaptureSeconds: {m0: 9}}\n");
    return text + tiny.substring(tiny.indexOf("\nhandling:")).replaceAll(" +\\w+Skills: .*\n", "");
  }

  private static SetupAttribute attribute(String id, int values) {
    return new SetupAttribute(
        id,
        id,
        IntStream.range(0, values)
            .mapToObj(v -> new AttributeValue(id + v, id + v, null, Set.of(), null))
            .toList());
  }

  private static Rig rig(String id, Random random) {
    Map<String, Set<String>> offers =
        random.nextBoolean()
            ? Map.of()
            : Map.of("a", Set.of("a0", "a1", "a" + random.nextInt(2, 5)));
    return new Rig(
        id,
        id,
        "rig",
        RIG.size(),
        RIG.camera(),
        RIG.plate(),
        RIG.arm(),
        List.of(),
        Set.of(),
        offers,
        new Setup(Map.of("a", "a0", "b", "b0")),
        1,
        false,
        Map.of(),
        RIG.open(),
        List.of(),
        null,
        List.of());
  }

  private static ChangeoverRule rule(Random random) {
    String attribute = random.nextBoolean() ? "a" : "b";
    Set<String> rigs = random.nextInt(3) == 0 ? Set.of() : Set.of("r" + random.nextInt(3));
    return new ChangeoverRule(
        attribute,
        valueOrAny(attribute, random),
        valueOrAny(attribute, random),
        rigs,
        1,
        0,
        1,
        Set.of(),
        null);
  }

  private static String valueOrAny(String attribute, Random random) {
    int values = attribute.equals("a") ? 5 : 3;
    return random.nextInt(6) == 0 ? ChangeoverRule.ANY : attribute + random.nextInt(values);
  }
}
