package rigmorrow.data.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static rigmorrow.data.workbook.RawWorkbook.cell;
import static rigmorrow.data.workbook.RawWorkbook.formula;
import static rigmorrow.data.workbook.RawWorkbook.number;
import static rigmorrow.data.workbook.RawWorkbook.text;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.data.column.TableKind;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.shottable.ReadTable;
import rigmorrow.data.table.TableOptions;

/** Whatever happens to a workbook, it is read or refused with reasons; nothing else comes out. */
class MangledWorkbookTest {
  private static final int ROUNDS = 250;
  private static final String[] STRANGE = {
    "",
    "-1",
    "2147483647",
    "99999999999",
    "XFD1",
    "ZZZZ9",
    "A1:XFD1048576",
    "1E+308",
    "1E+999999",
    "NaN",
    "#REF!",
    "true",
    "s",
    "str",
    "b",
    "e",
    "shared",
    "<c/>",
    "</row>",
    "&#0;",
    "]]>",
    "\""
  };

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void readsOrRefusesAFileWithChangedBytes(long seed) {
    byte[] sound = sound().bytes();
    Random random = new Random(seed);
    int refused = 0;
    for (int round = 0; round < ROUNDS; round++) {
      byte[] bytes = sound.clone();
      for (int change = random.nextInt(4); change >= 0; change--) {
        bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
      }
      refused += refuses(bytes, seed, round) ? 1 : 0;
    }
    assertThat(refused).isGreaterThan(ROUNDS / 4);
  }

  @ParameterizedTest
  @ValueSource(longs = {5, 6, 7, 8})
  void readsOrRefusesAFileWithChangedParts(long seed) {
    Random random = new Random(seed);
    int refused = 0;
    for (int round = 0; round < ROUNDS; round++) {
      Map<String, String> parts = sound().parts();
      List<String> names = List.copyOf(parts.keySet());
      for (int change = random.nextInt(3); change >= 0; change--) {
        parts.computeIfPresent(
            names.get(random.nextInt(names.size())), (name, xml) -> mangled(xml, random));
      }
      refused += refuses(RawWorkbook.zipped(parts), seed, round) ? 1 : 0;
    }
    assertThat(refused).isBetween(ROUNDS / 4, ROUNDS - 1);
  }

  private static boolean refuses(byte[] bytes, long seed, int round) {
    try {
      assertThat(ReadTable.workbook(bytes).shotList().jobs()).isNotEmpty();
      return false;
    } catch (InputException e) {
      assertThat(e.problems()).isNotEmpty();
      assertAnnotates(bytes, e.problems(), seed, round);
      return true;
    } catch (RuntimeException | Error e) {
      return fail("seed " + seed + ", round " + round, e);
    }
  }

  /** A copy that can be made can be read again. */
  private static void assertAnnotates(byte[] bytes, List<InputProblem> told, long seed, int round) {
    byte[] copy;
    try {
      copy =
          WorkbookAnnotator.annotated(
              bytes, TableOptions.FIND, TableKind.SHOT_LIST, told, List.of(), "list.xlsx");
    } catch (InputException e) {
      return;
    } catch (RuntimeException | Error e) {
      fail("annotated: seed " + seed + ", round " + round, e);
      return;
    }
    try {
      assertThat(ReadTable.workbook(copy).shotList().jobs()).isNotEmpty();
    } catch (InputException e) {
      assertThat(e.problems()).as("seed %d, round %d", seed, round).isNotEmpty();
      assertThat(e.problems().get(0).where())
          .as("seed %d, round %d: %s", seed, round, e.getMessage())
          .isNotEqualTo("file");
    }
  }

  private static String mangled(String xml, Random random) {
    int at = random.nextInt(xml.length());
    int end = Math.min(xml.length(), at + 1 + random.nextInt(12));
    return switch (random.nextInt(6)) {
      case 0 ->
          xml.substring(0, at)
              + (char) (xml.charAt(at) ^ 1 << random.nextInt(7))
              + xml.substring(at + 1);
      case 1 -> xml.substring(0, at) + xml.substring(end);
      case 2 -> xml.substring(0, at) + xml.substring(at, end).repeat(3) + xml.substring(end);
      case 3 -> xml.substring(0, at);
      default -> withValue(xml, at, STRANGE[random.nextInt(STRANGE.length)]);
    };
  }

  /** Puts something into an attribute or an element in place of what stands there. */
  private static String withValue(String xml, int at, String strange) {
    int open = Math.max(xml.indexOf("=\"", at) + 1, xml.indexOf(">", at));
    if (open < 1) {
      return strange;
    }
    char closing = xml.charAt(open) == '"' ? '"' : '<';
    int close = xml.indexOf(closing, open + 1);
    return close < 0
        ? xml.substring(0, open)
        : xml.substring(0, open + 1) + strange + xml.substring(close);
  }

  private static RawWorkbook sound() {
    RawWorkbook book = RawWorkbook.ofTexts("Notes", "Read me").sheet("Tomorrow");
    book.row(
        book.shared("Article"),
        book.shared("Recipe"),
        book.shared("Height (cm)"),
        book.shared("Due"),
        book.shared("Glass"));
    book.row(
        book.number("4711", "000000"),
        book.shared("spin-36"),
        number("30.5"),
        book.number("46352.666666666664", "yyyy-mm-dd hh:mm"),
        cell("b", "1"));
    book.row(
        formula("\"A\"&1", "str", "A1"),
        text("stills-4"),
        formula("15*2", "n", "30"),
        text("16:00"),
        text("ja"));
    return book.row("", book.shared("spin-36"), "", "", "").merge("A3:A4").merge("D3:D4");
  }
}
