package rigmorrow.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;

class TimesTest {
  @Test
  void separatesSkillsByCommas() {
    assertThat(TimesText.skills(Set.of("rigging", "electrics")))
        .isEqualTo(", skills electrics, rigging");
  }
}
