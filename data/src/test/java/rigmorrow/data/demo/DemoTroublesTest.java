package rigmorrow.data.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.fit.FitReason;
import rigmorrow.model.fit.FitRule;
import rigmorrow.model.fit.JobFit;

class DemoTroublesTest {
  private final FitCheck check = new FitCheck(DemoStudio.floor());
  private final List<JobFit> fits =
      DemoTroubles.shotList(DemoKnobs.DATE).jobs().stream().map(check::of).toList();

  @Test
  void hasOneSoundJob() {
    assertThat(fits.stream().filter(JobFit::fitsSomewhere))
        .extracting(JobFit::job)
        .containsExactly("T1");
  }

  @Test
  void hasTwoJobsThatNeedMeasuring() {
    assertThat(fits.stream().filter(JobFit::needsMeasuring))
        .extracting(JobFit::unmeasured)
        .containsExactly(List.of("massKg"), List.of("lengthMm", "widthMm", "heightMm"));
  }

  @Test
  void hasJobsThatNoRigCanTakeEachForItsReason() {
    Map<String, FitRule> expected =
        Map.of(
            "T4", FitRule.PLATE_PAYLOAD,
            "T5", FitRule.CLEAR_CIRCLE,
            "T6", FitRule.HANGING_PAYLOAD,
            "T7", FitRule.EQUIPMENT,
            "T8", FitRule.STABILITY,
            "T9", FitRule.FINISH);
    expected.forEach(
        (job, rule) ->
            assertThat(fit(job).nearestMiss().orElseThrow().reasons())
                .as(job)
                .extracting(FitReason::rule)
                .contains(rule));
  }

  private JobFit fit(String job) {
    return fits.stream().filter(fit -> fit.job().equals(job)).findFirst().orElseThrow();
  }
}
