package rigmorrow.data.shotjson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigmorrow.data.json.Reading;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.samples.FormatPage;
import rigmorrow.data.samples.Samples;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;
import rigmorrow.model.time.WorkingHours;

class ShotJsonTest {
  private final Floor floor = Samples.tinyFloor();
  private final ShotList tiny = Samples.tinyShots();

  @ParameterizedTest
  @EnumSource(Trees.Notation.class)
  void readsWhatItWrote(Trees.Notation notation) throws Exception {
    String text = ShotJsonWriter.write(tiny, notation);
    ShotList again = ShotJsonReader.read("again", text, notation, floor);
    assertThat(again).isEqualTo(tiny);
    assertThat(ShotJsonWriter.write(again, notation)).isEqualTo(text);
  }

  @Test
  void knowsExactlyTheFieldsThatAreDescribed() throws Exception {
    Reading reading = new Reading(new Problems("tiny"));
    ShotJsonReader.read(Samples.text("tiny-shots.json"), Trees.Notation.JSON, floor, reading);
    assertThat(new TreeMap<>(reading.known())).isEqualTo(FormatPage.section("Shot list in JSON"));
  }

  @Test
  void fillsInWhatIsLeftOut() {
    ShotJob job = tiny.jobs().get(2);
    assertThat(job.article()).isEqualTo("unknown-size");
    assertThat(job.name()).isEqualTo("unknown-size");
    assertThat(job.sample()).isEqualTo("unknown-size");
    assertThat(job.weight()).isEqualTo(1);
    assertThat(job.item().handsNeeded()).isEqualTo(1);
    assertThat(job.item().heightSource()).isEqualTo(HeightSource.HAND);
    assertThat(tiny.jobs().get(1).item().heightSource()).isEqualTo(HeightSource.LIST);
    assertThat(tiny.pins().get(1).state()).isEqualTo(PinState.PLANNED);
  }

  /** The rotator of the running job takes two people, and the crew is two. */
  @Test
  void pinsWhatFitsAndStartsWhenTheCrewIsThere() {
    FitCheck check = new FitCheck(floor);
    for (Pin pin : tiny.pins()) {
      ShotJob job =
          tiny.jobs().stream()
              .filter(each -> each.id().equals(pin.job()))
              .findFirst()
              .orElseThrow();
      assertThat(check.of(job, floor.rig(pin.rig()).orElseThrow()).fits()).as(job.id()).isTrue();
    }
    PlanClock clock = new PlanClock(floor.zone(), tiny.date(), tiny.days());
    int start = clock.secondsAt(tiny.pins().get(0).startsAt());
    assertThat(floor.crew())
        .allMatch(
            operator ->
                WorkingHours.of(operator, clock).stream()
                    .anyMatch(span -> span.contains(new Span(start, start + 1))));
  }

  @Test
  void leavesUnknownSizesUnknown() {
    assertThat(tiny.jobs().get(2).item().measured()).isFalse();
    assertThat(tiny.jobs().get(2).item().massKg()).isNull();
  }

  @Test
  void keepsLeadingZerosOfArticles() {
    assertThat(tiny.jobs().get(0).article()).isEqualTo("004711");
  }

  @Test
  void tellsStrapsFromWholeHangingItems() {
    assertThat(tiny.jobs().get(0).item().hangsFree()).isFalse();
    assertThat(tiny.jobs().get(0).item().hanging()).isNotNull();
  }
}
