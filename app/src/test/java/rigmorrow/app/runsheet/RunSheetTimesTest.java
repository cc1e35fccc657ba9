package rigmorrow.app.runsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import rigmorrow.model.shot.Batch;

/** Times on run sheets are floor time, also on the days of a clock change. */
class RunSheetTimesTest {
  private final Batch batch = SampleDay.batch(SampleDay.SUMMER);

  @Test
  void timesAreRightWhereAnHourComesTwice() {
    Batch autumn = SampleDay.batch(LocalDate.of(2026, 10, 25));
    int secondHalfPastTwo = 3 * 3600 + 1800;
    Document night =
        RunSheetsTest.read(
            RunSheetsTest.sheets(autumn, SamplePlan.withNightJob(autumn, secondHalfPastTwo)));

    assertThat(night.select("#rig-3 .parts .when").eachText())
        .containsExactly("02:30–02:32 CET", "02:32–02:42 CET", "02:42–02:43 CET");
    assertThat(night.select("#rig-3 .remark").eachText())
        .contains("Rig opens 00:00 CEST; Nothing planned 00:00 CEST–02:30 CET (3 h 30 min)");
    assertThat(night.select("#rig-1 .entry .when").first().text()).isEqualTo("07:00–07:02 CET");
    assertThat(night.select("section.first .facts").text())
        .contains("Europe/Berlin, CEST (UTC+02:00) until 03:00, then CET (UTC+01:00) from 02:00");
  }

  @Test
  void timesAreRightWhereAnHourIsLost() {
    Batch spring = SampleDay.batch(LocalDate.of(2027, 3, 28));
    Document night =
        RunSheetsTest.read(
            RunSheetsTest.sheets(spring, SamplePlan.withNightJob(spring, 2 * 3600 - 60)));

    assertThat(night.select("#rig-3 .parts .when").eachText())
        .containsExactly("01:59 CET–03:01 CEST", "03:01–03:11 CEST", "03:11–03:12 CEST");
  }

  @Test
  void aTimeOnTheNextDayCarriesItsDate() {
    Document night =
        RunSheetsTest.read(
            RunSheetsTest.sheets(batch, SamplePlan.withNightJob(batch, 86400 - 300)));

    assertThat(night.select("#rig-3 .parts .when").eachText())
        .containsExactly("23:55–23:57", "23:57 – Tue 2 Jun 00:07", "Tue 2 Jun 00:07–00:08");
  }

  @Test
  void theChartCountsHoursAsTheClockShowsThem() {
    Batch autumn = SampleDay.batch(LocalDate.of(2026, 10, 25));
    Document night =
        RunSheetsTest.read(
            RunSheetsTest.sheets(autumn, SamplePlan.withNightJob(autumn, 2 * 3600 - 60)));

    assertThat(night.select("#rig-3 .chart tr:first-child span").eachText())
        .containsExactly("01", "02");
    assertThat(night.select("#rig-1 .chart tr:first-child span").eachText())
        .containsExactly("07", "08", "09");
    assertThat(night.select("#rig-1 .chart .lane").eachText())
        .containsExactly(
            "Hour", "Number", "Changeover", "Warm-up", "Load", "Capture", "Unload", "Rig waits");
  }

  @Test
  void aChartIsDrawnForEachDay() {
    Document night =
        RunSheetsTest.read(
            RunSheetsTest.sheets(batch, SamplePlan.withNightJob(batch, 86400 - 300)));

    assertThat(night.select("#rig-3 .chart .strong").eachText())
        .containsExactly("Mon 1 Jun", "Tue 2 Jun");
    assertThat(night.select("#rig-3 .chart svg path").eachAttr("d"))
        .isNotEmpty()
        .allMatch(path -> path.matches("(M[-0-9. ]+(L[-0-9. ]+){3}Z)+"));
    assertThat(night.select("#rig-3 .chart [style]").eachAttr("style"))
        .allMatch(style -> style.matches("left: [0-9]{1,2}\\.[0-9]{2}%"));
  }
}
