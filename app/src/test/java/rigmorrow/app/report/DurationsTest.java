package rigmorrow.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DurationsTest {
  @ParameterizedTest
  @CsvSource({
    "25230, 25440, 4 min", // 07:00:30 to 07:04:00, which stand there as 07:00 and 07:04
    "25200, 25259, less than 1 min",
    "25259, 25260, 1 min",
    "0, 0, 0 min",
    "0, 7260, 2 h 1 min"
  })
  void agreesWithTheHoursThatStandBesideASpan(int start, int end, String text) {
    assertThat(Durations.beside(start, end)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0 min, 0 min, 0 min, 0 s",
    "1, 1 min, 1 min, less than 1 min, 1 s",
    "59, 1 min, 1 min, less than 1 min, 59 s",
    "60, 1 min, 1 min, 1 min, 1 min",
    "728, 13 min, 13 min, 12 min, 12 min 8 s",
    "3600, 1 h, 1 h, 1 h, 1 h",
    "29407, 8 h 11 min, 8 h 11 min, 8 h 10 min, 8 h 10 min 7 s",
    "86399, 24 h, 24 h, 23 h 59 min, 23 h 59 min 59 s",
    "86400, 24 h, 1 day, 24 h, 24 h",
    "86401, 24 h 1 min, 1 day 1 h, 24 h, 24 h 1 s",
    "172799, 48 h, 2 days, 47 h 59 min, 47 h 59 min 59 s",
    "183600, 51 h, 2 days 3 h, 51 h, 51 h",
  })
  void hasOneRuleForEachUse(long seconds, String any, String late, String spare, String exact) {
    assertThat(Durations.of(seconds)).isEqualTo(any);
    assertThat(Durations.late(seconds)).isEqualTo(late);
    assertThat(Durations.available(seconds)).isEqualTo(spare);
    assertThat(Durations.exact(seconds)).isEqualTo(exact);
  }

  @Test
  void saysAtAGlanceWhatIsLeft() {
    assertThat(Durations.left(0)).isEqualTo("0 s");
    assertThat(Durations.left(119)).isEqualTo("119 s");
    assertThat(Durations.left(149)).isEqualTo("2 min");
    assertThat(Durations.left(150)).isEqualTo("3 min");
    assertThat(Durations.left(3 * 3600 + 5 * 60)).isEqualTo("3 h 5 min");
  }
}
