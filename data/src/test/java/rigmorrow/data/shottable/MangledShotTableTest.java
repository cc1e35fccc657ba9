package rigmorrow.data.shottable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.table.TableOptions;

class MangledShotTableTest {
  private static final int ROUNDS = 250;
  private static final List<String> SAMPLES =
      List.of("danish-windows-1252", "german", "tab-utf-16", "inch-pound", "utf-8-mark");

  /** A thousand files in all: each is read or refused with reasons, and nothing else happens. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void readsOrRefusesWhateverComes(long seed) throws IOException {
    Random random = new Random(seed);
    int refused = 0;
    for (int round = 0; round < ROUNDS; round++) {
      byte[] bytes = sample(SAMPLES.get(random.nextInt(SAMPLES.size())));
      int changes = 1 + random.nextInt(4);
      for (int i = 0; i < changes; i++) {
        bytes = mangled(bytes, random);
      }
      try {
        ShotTableReading reading = ReadTable.csv(bytes, "mangled", TableOptions.FIND);
        assertThat(reading.shotList().jobs()).isNotEmpty();
      } catch (InputException e) {
        refused++;
        assertThat(e.problems()).isNotEmpty();
      } catch (RuntimeException | Error e) {
        fail("seed " + seed + ", round " + round, e);
      }
    }
    assertThat(refused).isBetween(ROUNDS / 4, ROUNDS - 1);
  }

  private static byte[] mangled(byte[] bytes, Random random) {
    if (bytes.length == 0) {
      return bytes;
    }
    int at = random.nextInt(bytes.length);
    return switch (random.nextInt(9)) {
      case 0 -> flipped(bytes, at, random);
      case 1 -> Arrays.copyOf(bytes, at);
      case 2 -> replaced(bytes, ';', ",;\t|".charAt(random.nextInt(4)));
      case 3 -> replaced(bytes, ',', ".;\"\n".charAt(random.nextInt(4)));
      case 4 -> inserted(bytes, at, "x".repeat(random.nextInt(40_000)));
      case 5 -> inserted(bytes, at, "9".repeat(random.nextInt(2_000)));
      case 6 ->
          inserted(bytes, at, new String[] {"\0", "\"", "\r", "\uFEFF", "-"}[random.nextInt(5)]);
      case 7 -> swappedCells(bytes, random);
      default -> inserted(bytes, at, new String(bytes, 0, at, StandardCharsets.ISO_8859_1));
    };
  }

  private static byte[] flipped(byte[] bytes, int at, Random random) {
    byte[] copy = bytes.clone();
    copy[at] = (byte) (copy[at] ^ (1 << random.nextInt(8)));
    return copy;
  }

  private static byte[] replaced(byte[] bytes, char from, char to) {
    byte[] copy = bytes.clone();
    for (int i = 0; i < copy.length; i++) {
      if (copy[i] == from) {
        copy[i] = (byte) to;
      }
    }
    return copy;
  }

  private static byte[] inserted(byte[] bytes, int at, String text) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(bytes, 0, at);
    out.writeBytes(text.getBytes(StandardCharsets.UTF_8));
    out.write(bytes, at, bytes.length - at);
    return out.toByteArray();
  }

  private static byte[] swappedCells(byte[] bytes, Random random) {
    Charset oneByteEach = StandardCharsets.ISO_8859_1;
    String[] cells = new String(bytes, oneByteEach).split("(?<=[,;\t\n])");
    int first = random.nextInt(cells.length);
    int second = random.nextInt(cells.length);
    String kept = cells[first];
    cells[first] = cells[second];
    cells[second] = kept;
    return String.join("", cells).getBytes(oneByteEach);
  }

  private static byte[] sample(String name) throws IOException {
    try (InputStream in =
        MangledShotTableTest.class.getResourceAsStream("/shotlist-csv/" + name + ".csv")) {
      return in.readAllBytes();
    }
  }
}
