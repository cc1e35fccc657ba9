package rigmorrow.data.column;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TimesTest {
  private static final LocalDate PLAN_DATE = LocalDate.of(2026, 11, 26);

  @ParameterizedTest
  @CsvSource({
    "2026-11-26T16:00,2026-11-26T16:00",
    "2026-11-27 16:05,2026-11-27T16:05",
    "2026-11-27T16:05:09.25,2026-11-27T16:05:09.25",
    "16:00,2026-11-26T16:00",
    "8:05,2026-11-26T08:05",
    "14.30,2026-11-26T14:30",
    "2026-11-26 16.00,2026-11-26T16:00",
    "26.11.2026 16.00,2026-11-26T16:00",
    "26.11.2026 16:00,2026-11-26T16:00",
    "1.2.2027 7:00,2027-02-01T07:00",
    "26-11-2026 16:00,2026-11-26T16:00",
    "11-12-2026 16:00,2026-12-11T16:00",
    "26/11/2026 16:00,2026-11-26T16:00",
    "11/26/2026 16:00,2026-11-26T16:00",
    "11/11/2026 16:00,2026-11-11T16:00",
    "2025-11-26 00:00,2025-11-26T00:00",
    "2027-11-26 23:59,2027-11-26T23:59"
  })
  void readsTheWaysPeopleWriteATime(String written, LocalDateTime time) {
    assertThat(Times.read(written, PLAN_DATE).time()).isEqualTo(time);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "11/12/2026 16:00",
        "2026-11-26",
        "26.11.2026",
        "31.11.2026 16:00",
        "2026-02-29 10:00",
        "24:00",
        "16:60",
        "16",
        "4:00 PM",
        "26.11.26 16:00",
        "26.11-2026 16:00",
        "2025-11-25 10:00",
        "2027-11-27 10:00",
        "2026-11-26T16:00Z",
        "46352.5"
      })
  void refusesWhatWouldHaveToBeGuessed(String written) {
    Times.Reading reading = Times.read(written, PLAN_DATE);
    assertThat(reading.time()).isNull();
    assertThat(reading.accepted()).isNotEmpty();
  }
}
