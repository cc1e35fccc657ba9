package rigmorrow.benchmarks.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigmorrow.benchmarks.compare.Cells.cell;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.benchmarks.run.Cell;
import rigmorrow.benchmarks.run.Moment;
import rigmorrow.benchmarks.run.Score;

/** Figures worked out by hand. */
class PeerSummaryTest {
  private static PeerSummary summary(List<Cell> cells, String peer) {
    return PeerSummary.all(new Results(cells)).stream()
        .filter(one -> one.peer().equals(peer))
        .findFirst()
        .orElseThrow();
  }

  /** Best of A is 100 and of B 50, so ours is 0, 20, 0 % above and the peer 50, 100, 100 %. */
  private static final List<Cell> PLAIN =
      List.of(
          cell("A", 1, "ours", 0, 100),
          cell("A", 2, "ours", 0, 120),
          cell("A", 1, "plain", 0, 150),
          cell("A", 2, "plain", 0, 200),
          cell("B", 1, "ours", 0, 50),
          cell("B", 1, "plain", 0, 100));

  @Test
  void meansTheGapToTheBestOfTheRunOverPlans() {
    assertThat(summary(PLAIN, "ours").meanGapPercent()).isCloseTo(20 / 3.0, within(1e-9));
    assertThat(summary(PLAIN, "plain").meanGapPercent()).isCloseTo(250 / 3.0, within(1e-9));
  }

  /** A: 110 to 175; B: 50 to 100. */
  @Test
  void takesTheGeometricMeanOfTheRatiosOfMeans() {
    Interval ratio = summary(PLAIN, "plain").ratio();
    assertThat(ratio.mean()).isCloseTo(Math.sqrt(110 / 175.0 * 0.5), within(1e-9));
    assertThat(ratio.count()).isEqualTo(2);
  }

  @Test
  void countsWinsTiesAndLossesByTheFirstPartThatDiffers() {
    List<Cell> cells =
        List.of(
            cell("A", 1, "ours", 0, 900),
            cell("A", 1, "plain", 1, 100),
            cell("A", 2, "ours", 2, 100),
            cell("A", 2, "plain", 2, 100),
            cell("A", 3, "ours", 2, 101),
            cell("A", 3, "plain", 2, 100),
            cell("A", 4, "plain", 2, 100));
    PeerSummary summary = summary(cells, "plain");
    assertThat(List.of(summary.wins(), summary.ties(), summary.losses())).containsExactly(1, 1, 1);
    assertThat(summary.ratio()).isNull();
    assertThat(summary.withoutGap()).isEqualTo(4);
    assertThat(summary.meanGapPercent()).isNull();
  }

  @Test
  void letsAPlanThatBreaksARuleLoseAndCountNowhere() {
    List<Cell> cells =
        List.of(
            cell("A", 1, "ours", 0, 200),
            cell("A", 1, "plain", new Score(0, 0, 100), null, 1, List.of()),
            cell("A", 1, "ATCS", new Score(5, 0, 100), null, 0, List.of()));
    assertThat(summary(cells, "ours").meanGapPercent()).isZero();
    assertThat(summary(cells, "plain").wins()).isEqualTo(1);
    assertThat(summary(cells, "plain").unworkable()).isEqualTo(1);
    assertThat(summary(cells, "ATCS").wins()).isEqualTo(1);
    assertThat(summary(cells, "ATCS").withoutGap()).isEqualTo(1);
  }

  @Test
  void measuresAgainstTheBestKnownValueAndMayBeatIt() {
    List<Cell> cells =
        List.of(
            cell("A", 1, "ours", new Score(0, 0, 90), 100L, 0, List.of()),
            cell("A", 1, "plain", new Score(0, 1, 90), 100L, 0, List.of()));
    assertThat(summary(cells, "ours").meanGapPercent()).isCloseTo(-10, within(1e-9));
    assertThat(summary(cells, "plain").meanGapPercent()).isNull();
  }

  @Test
  void hasNoGapAboveABestOfNothing() {
    List<Cell> cells = List.of(cell("A", 1, "ours", 0, 0), cell("A", 1, "plain", 0, 7));
    assertThat(summary(cells, "ours").meanGapPercent()).isZero();
    assertThat(summary(cells, "plain").withoutGap()).isEqualTo(1);
    assertThat(summary(cells, "plain").ratio()).isNull();
  }

  /** A is known from the first moment on and halves at the end, B from 100 ms on and stays. */
  @Test
  void beginsACurveWhereAllInstancesHaveAPlan() {
    List<Cell> cells =
        List.of(
            cell(
                "A",
                1,
                "ours",
                new Score(0, 0, 100),
                null,
                0,
                List.of(
                    new Moment(10, new Score(0, 0, 200)), new Moment(1000, new Score(0, 0, 100)))),
            cell(
                "B",
                1,
                "ours",
                new Score(0, 0, 30),
                null,
                0,
                List.of(new Moment(100, new Score(0, 0, 30)))));
    Curve curve = Curve.all(new Results(cells)).get(0);
    List<Long> grid = Moment.grid(1000);
    assertThat(grid.get(curve.first())).isGreaterThanOrEqualTo(100);
    assertThat(grid.get(curve.first() - 1)).isLessThan(100);
    assertThat(curve.instances()).isEqualTo(2);
    assertThat(curve.timesBest().get(0)).isCloseTo(Math.sqrt(2), within(1e-9));
    assertThat(curve.timesBest().get(curve.timesBest().size() - 1)).isCloseTo(1, within(1e-9));
  }
}
