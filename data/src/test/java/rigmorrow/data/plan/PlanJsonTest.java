package rigmorrow.data.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.data.json.Reading;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.samples.FormatPage;
import rigmorrow.data.samples.SamplePlans;
import rigmorrow.model.plan.Plan;

class PlanJsonTest {

  /** The last two days have clock changes in this zone: 23 and 25 hours long. */
  @ParameterizedTest
  @ValueSource(strings = {"2026-11-26", "2026-03-29", "2026-10-25"})
  void readsWhatItWrote(LocalDate date) throws Exception {
    Plan plan = SamplePlans.tiny(date);
    String text = PlanJsonWriter.write(plan);
    assertThat(PlanJsonReader.read("plan.json", text)).isEqualTo(plan);
    assertThat(PlanJsonWriter.write(PlanJsonReader.read("plan.json", text))).isEqualTo(text);
  }

  @Test
  void knowsExactlyTheFieldsThatAreDescribed() throws Exception {
    Reading reading = new Reading(new Problems("tiny"));
    PlanJsonReader.read(PlanJsonWriter.write(SamplePlans.tiny(LocalDate.EPOCH)), reading);
    assertThat(new TreeMap<>(reading.known())).isEqualTo(FormatPage.section("Plan in JSON"));
  }

  /** As files are that were written where nobody asked for bounds. */
  @Test
  void readsAPlanWithoutBounds() throws Exception {
    Plan plan = SamplePlans.tiny(LocalDate.of(2026, 11, 26));
    String text = PlanJsonWriter.write(plan);
    String without = text.replaceFirst("\\s*\"bounds\" : \\{[^}]*},", "");
    assertThat(without).isNotEqualTo(text);

    Plan read = PlanJsonReader.read("plan.json", without);

    assertThat(read.bounds()).isNull();
    assertThat(read.withBounds(plan.bounds())).isEqualTo(plan);
    assertThat(PlanJsonWriter.write(read)).isEqualTo(without);
  }

  @Test
  void writesTimesWithTheOffsetOfTheDay() {
    assertThat(PlanJsonWriter.write(SamplePlans.tiny(LocalDate.of(2026, 11, 26))))
        .contains("\"startsAt\" : \"2026-11-26T02:00:00+01:00\"");
    assertThat(PlanJsonWriter.write(SamplePlans.tiny(LocalDate.of(2026, 10, 25))))
        .contains("\"startsAt\" : \"2026-10-25T02:00:00+02:00\"")
        .contains("\"startsAt\" : \"2026-10-25T02:00:00+01:00\"");
  }

  @Test
  void tellsEveryProblemAtOnce() {
    String text =
        PlanJsonWriter.write(SamplePlans.tiny(LocalDate.of(2026, 11, 26)))
            .replace("2026-11-26T02:06:40+01:00", "soon")
            .replace("\"needs-measuring\"", "\"needs-mesuring\"")
            .replace("\"planned\" : 2", "\"planned\" : -2");
    assertThatThrownBy(() -> PlanJsonReader.read("plan.json", text))
        .isInstanceOfSatisfying(
            InputException.class,
            e ->
                assertThat(e.problems())
                    .extracting(problem -> problem.where())
                    .containsExactlyInAnyOrder(
                        "rigs[0].jobs[0].capture.startsAt",
                        "rigs[0].jobs[0].load.endsAt",
                        "leftOut[0].cause",
                        "figures.planned"));
  }

  @Test
  void refusesAPartThatEndsBeforeItStarts() {
    String text =
        PlanJsonWriter.write(SamplePlans.tiny(LocalDate.of(2026, 11, 26)))
            .replace(
                "\"endsAt\" : \"2026-11-26T02:08:20+01:00\"",
                "\"endsAt\" : \"2026-11-26T02:00:00+01:00\"");
    assertThatThrownBy(() -> PlanJsonReader.read("plan.json", text))
        .hasMessageContaining("rigs[0].jobs[0].capture.endsAt");
  }
}
