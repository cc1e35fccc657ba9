package rigmorrow.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimesTest {
  @ParameterizedTest
  @CsvSource({
    "61, 2 min",
    "86399, 1440 min",
    "86400, 1 day",
    "86401, 1 day 1 h",
    "183600, 2 days 3 h",
    "172799, 2 days"
  })
  void tellsLatenessOfADayAndMoreInDaysAndHours(long seconds, String text) {
    assertThat(Times.late(seconds)).isEqualTo(text);
  }

  @Test
  void separatesSkillsByCommas() {
    assertThat(TimesText.skills(Set.of("rigging", "electrics")))
        .isEqualTo(", skills electrics, rigging");
  }
}
