package rigmorrow.data.shottable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.data.table.TableOptions;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Hanging;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.Power;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

class ShotTableRoundTripTest {
  private static final LocalDate DATE = ReadTable.DATE;
  private static final String[] TEXTS = {
    "Vase",
    "Rød, \"stor\" vase",
    "line one\nline two",
    "a;b\tc",
    "5\" plate",
    "00417",
    "1,234",
    "=1+1"
  };

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void readsBackWhatItWrote(int seed) throws Exception {
    Random random = new Random(seed);
    List<ShotJob> jobs = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      jobs.add(job(i, random));
    }
    ShotList list = new ShotList(DATE, 2, jobs, List.of());
    ShotTableReading reading =
        ReadTable.csv(ShotTableWriter.write(list), "list.csv", TableOptions.FIND);
    assertThat(reading.shotList()).isEqualTo(list);
    assertThat(reading.notes().unknownColumns()).isEmpty();
    assertThat(reading.notes().conversions()).isEmpty();
  }

  @Test
  void writesOnlyColumnsThatSaySomething() {
    Item item =
        new Item(
            null,
            null,
            310,
            1.234,
            null,
            null,
            null,
            null,
            null,
            null,
            false,
            1,
            false,
            0,
            null,
            null,
            HeightSource.LIST,
            false);
    ShotJob job =
        new ShotJob(
            "1", "1", null, "Vase", "1", "spin-36", item, Setup.ANY, null, null, null, 1, null);
    String text =
        new String(
            ShotTableWriter.write(new ShotList(DATE, 1, List.of(job), List.of())),
            StandardCharsets.UTF_8);
    assertThat(text)
        .isEqualTo(
            "\uFEFFId,Article,Name,Sample,Recipe,Height (mm),Mass (kg),Height source\r\n"
                + "1,1,Vase,1,spin-36,310,1.2340,list\r\n");
  }

  @Test
  void refusesToLosePins() {
    ShotList pinned =
        new ShotList(DATE, 1, List.of(), List.of(new Pin("1", "R1", null, null, PinState.PLANNED)));
    assertThatThrownBy(() -> ShotTableWriter.write(pinned))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("1 pins");
  }

  @Test
  void refusesToLoseJobsHeldBack() throws Exception {
    ShotList list = ReadTable.csv("Article,Recipe\n1,spin-36\n").shotList();
    assertThatThrownBy(() -> ShotTableWriter.write(list.withHeldBack(List.of("1"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("holds back 1 jobs");
  }

  private static ShotJob job(int number, Random random) {
    LocalDateTime arrivesAt = random.nextBoolean() ? null : time(0, random);
    return new ShotJob(
        "J" + number,
        "%05d".formatted(random.nextInt(100_000)),
        random.nextBoolean() ? null : "6291041500213",
        text(random),
        "S" + random.nextInt(20),
        random.nextBoolean() ? "spin-36" : "stills-4",
        item(random),
        random.nextBoolean() ? Setup.ANY : new Setup(Map.of("background", "grey")),
        arrivesAt,
        random.nextBoolean() ? null : time(2, random),
        random.nextBoolean() ? null : new Promise(time(1, random), random.nextBoolean()),
        1 + random.nextInt(1_000),
        random.nextBoolean() ? null : text(random));
  }

  private static Item item(Random random) {
    int length = 10 + random.nextInt(2_000);
    int width = 10 + random.nextInt(2_000);
    int height = 10 + random.nextInt(2_000);
    return new Item(
        random.nextInt(4) == 0 ? null : length,
        random.nextInt(4) == 0 ? null : width,
        random.nextInt(4) == 0 ? null : height,
        random.nextInt(4) == 0 ? null : mass(random),
        random.nextBoolean() ? null : 1 + random.nextInt(length),
        random.nextBoolean() ? null : 1 + random.nextInt(width),
        random.nextBoolean() ? null : 1 + random.nextInt(3_000),
        random.nextBoolean() ? null : 1 + random.nextInt(height),
        random.nextBoolean() ? null : random.nextInt(50),
        random.nextBoolean() ? null : "glossy",
        random.nextBoolean(),
        1 + random.nextInt(3),
        random.nextBoolean(),
        random.nextBoolean() ? 0 : mass(random),
        random.nextBoolean()
            ? null
            : new Hanging(mass(random), 1 + random.nextInt(900), random.nextBoolean()),
        random.nextBoolean()
            ? null
            : new Power(1 + random.nextInt(400), 1 + random.nextInt(4_000), "C"),
        HeightSource.values()[random.nextInt(3)],
        random.nextBoolean());
  }

  /** Three decimals as often as not: the form that has two meanings when written carelessly. */
  private static double mass(Random random) {
    return random.nextBoolean()
        ? (1 + random.nextInt(99_999)) / 1_000.0
        : 0.001 + random.nextDouble();
  }

  private static String text(Random random) {
    return TEXTS[random.nextInt(TEXTS.length)];
  }

  private static LocalDateTime time(int day, Random random) {
    return DATE.plusDays(day).atTime(random.nextInt(24), random.nextInt(60), random.nextInt(60));
  }
}
