package rigmorrow.data.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import rigmorrow.data.shottable.ReadTable;
import rigmorrow.data.shottable.ShotTableReading;
import rigmorrow.model.shot.ShotJob;

class LargeWorkbookTest {
  private static final int JOBS = 2_000;

  /** The longest that a planner should wait for a large day. */
  private static final Duration BAR = Duration.ofSeconds(3);

  private static final List<String> HEADERS =
      List.of(
          "Article",
          "GTIN",
          "Name",
          "Recipe",
          "Length (cm)",
          "Width (cm)",
          "Height (cm)",
          "Mass (kg)",
          "Finish",
          "Glass",
          "Arrives",
          "Due",
          "Must",
          "Job weight",
          "Note");

  @Test
  void readsTwoThousandJobsInUnderThreeSeconds() throws Exception {
    byte[] bytes = workbook();
    long start = processorNanos();
    ShotTableReading reading = ReadTable.workbook(bytes);
    Duration taken = Duration.ofNanos(processorNanos() - start);
    assertThat(reading.shotList().jobs()).hasSize(JOBS);
    assertThat(reading.shotList().jobs().get(JOBS - 1))
        .extracting(ShotJob::article, job -> job.item().heightMm())
        .containsExactly("002000", 300);
    assertThat(taken).isLessThan(BAR);
  }

  /** Time on the processor: what else the machine does must not count. */
  private static long processorNanos() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static byte[] workbook() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(out, "test", null)) {
      Worksheet sheet = workbook.newWorksheet("Tomorrow");
      for (int column = 0; column < HEADERS.size(); column++) {
        sheet.value(0, column, HEADERS.get(column));
      }
      for (int row = 1; row <= JOBS; row++) {
        row(sheet, row);
      }
    }
    return out.toByteArray();
  }

  private static void row(Worksheet sheet, int row) {
    sheet.value(row, 0, row);
    sheet.style(row, 0).format("000000").set();
    sheet.value(row, 1, 6_291_041_500_213L);
    sheet.value(row, 2, "Vase number " + row);
    sheet.value(row, 3, "spin-36");
    sheet.value(row, 4, 12.5);
    sheet.value(row, 5, 12.5);
    sheet.value(row, 6, 30);
    sheet.value(row, 7, 1.234);
    sheet.value(row, 8, "matte");
    sheet.value(row, 9, row % 2 == 0);
    for (int column = 10; column < 12; column++) {
      sheet.value(row, column, ReadTable.DATE.atTime(6 + column, 30));
      sheet.style(row, column).format("yyyy-mm-dd hh:mm").set();
    }
    sheet.value(row, 12, "ja");
    sheet.value(row, 13, 1 + row % 9);
    sheet.value(row, 14, "handle with gloves");
  }
}
