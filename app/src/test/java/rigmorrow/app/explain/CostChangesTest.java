package rigmorrow.app.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigmorrow.app.report.Times;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.explain.Cost;

class CostChangesTest {
  private static final Times TIMES = Times.of(Demo.batch(1, 1, LocalDate.of(2026, 3, 18)));

  @ParameterizedTest
  @CsvSource({
    "60, Worse by 1 point.",
    "1, Worse by less than 1 point.",
    "181, Worse by 3 points.",
    "-7199, Better by 120 points.",
    "90000, 'Worse by 1,500 points.'",
    "0, Costs the same."
  })
  void tellsWholePointsAndNeverNoneWhereThereAreSome(long sixtieths, String sentence) {
    assertThat(CostChanges.of(cost(100_000, 0), cost(100_000 + sixtieths, 0), TIMES))
        .containsExactly(sentence);
  }

  @ParameterizedTest
  @CsvSource({
    "728, 1500, All lateness 25 min instead of 13 min.",
    "728, 760, All lateness less than 1 min more.",
    "760, 728, All lateness less than 1 min less."
  })
  void neverTellsTheSameFigureInsteadOfItself(long before, long after, String sentence) {
    assertThat(CostChanges.of(cost(0, before), cost(0, after), TIMES)).contains(sentence);
  }

  private static Cost cost(long sixtieths, long lateSeconds) {
    return new Cost(0, 0, sixtieths, lateSeconds, lateSeconds, 1, 0, 0, 3_600);
  }
}
