package rigmorrow.data.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigmorrow.data.problem.Problems;

class TreesTest {
  /** Texts that a careless writer would turn into something else. */
  static final List<String> AWKWARD =
      List.of(
          "1",
          "007",
          "1e5",
          "0x1F",
          "1_000",
          "true",
          "No",
          "null",
          "~",
          "*",
          "&a",
          "!x",
          "- a",
          "a: b",
          "a #b",
          "# a",
          " lead",
          "trail ",
          "07:00",
          "2026-11-26",
          ".nan",
          ".inf",
          "{a}",
          "[a]",
          "\"",
          "'",
          "a\nb",
          "a\tb",
          "%",
          "@",
          "`",
          "|",
          ">",
          "?",
          "Grün 1½ – ✓",
          "\\n",
          "=",
          "<<",
          "a,b",
          "-",
          "---",
          "...",
          "\u0085",
          "a\u2028b",
          "\uFEFFx",
          "\uD83D\uDCF7");

  @ParameterizedTest
  @EnumSource(Trees.Notation.class)
  void keepsAwkwardTextsAsTheyAre(Trees.Notation notation) {
    AWKWARD.forEach(text -> assertKept(text, notation));
  }

  @ParameterizedTest
  @EnumSource(Trees.Notation.class)
  void keepsRandomTextsAsTheyAre(Trees.Notation notation) {
    Random random = new Random(20);
    String letters = "ab01 \n\t\r:-#'\"\\,[]{}&*!|>%@`~?=.<\u0085\u00a0\u2028é";
    for (int round = 0; round < 2_000; round++) {
      StringBuilder text = new StringBuilder();
      int length = 1 + random.nextInt(8);
      random.ints(length, 0, letters.length()).forEach(i -> text.append(letters.charAt(i)));
      assertKept(text.toString(), notation);
    }
  }

  private static void assertKept(String text, Trees.Notation notation) {
    JsonNode tree =
        new Fields().text("text", text).text(text + "x", text).texts("list", List.of(text)).node();
    Problems problems = new Problems("test");
    JsonNode read = Trees.read(Trees.write(tree, notation), notation, problems);
    assertThat(problems.none()).as(text).isTrue();
    assertThat(read).as(text).isEqualTo(tree);
  }
}
