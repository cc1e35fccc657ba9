package rigmorrow.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.solver.fixture.RandomFloors;
import rigmorrow.solver.fixture.RandomSequences;

/** What the walk of a rig says of its decode, and where a decode gives up. */
class RigWalkTest {
  private CompiledBatch batch;
  private Timeline timeline;
  private RigWalk walk;

  static LongStream seeds() {
    return LongStream.range(300, 500);
  }

  private void decoded(long seed) {
    batch = CompiledBatch.of(RandomFloors.batch(seed));
    timeline = Timeline.forChanges(batch);
    walk = new RigWalk(batch, timeline);
    RandomSequences.of(batch, new Random(seed), 4).decode(timeline);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void neverSaysMoreThanTheDecode(long seed) {
    decoded(seed);
    long late = 0;
    long setup = 0;
    long hard = 0;
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      walk.walk(rig, 0);
      assertThat(walk.end()).isLessThanOrEqualTo(timeline.endOf(rig));
      late += walk.lateWeighted();
      setup += walk.setupSeconds();
      hard += walk.hard();
    }
    assertThat(late).isLessThanOrEqualTo(timeline.lateWeighted());
    assertThat(setup).isLessThanOrEqualTo(timeline.changeoverSeconds());
    assertThat(hard).isLessThanOrEqualTo(timeline.hard());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void goesOnFromAnyPlaceAsFromTheStart(long seed) {
    decoded(seed);
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      walk.keep(rig, 0);
      int end = walk.end();
      long late = walk.lateWeighted();
      int setup = walk.setupSeconds();
      for (int from = 0; from <= timeline.length(rig); from++) {
        walk.walk(rig, from);
        assertThat(walk.end()).isEqualTo(end);
        assertThat(walk.lateWeighted()).isEqualTo(late);
        assertThat(walk.setupSeconds()).isEqualTo(setup);
      }
    }
  }

  @Test
  void isAsLateAsTheDecodeWhereEverybodyWaitsAsTheyDid() {
    int later = 0;
    for (long seed : seeds().toArray()) {
      decoded(seed);
      keepAll();
      if (!batch.latenessCounts()) {
        assertThat(walk.keptLateWeighted(0)).isZero();
        continue;
      }
      long late = 0;
      for (int rig = 0; rig < batch.rigCount(); rig++) {
        late += walk.keptLateWeighted(rig);
        for (int from = 0; from <= timeline.length(rig); from++) {
          walk.walk(rig, from);
          assertThat(walk.lateWeightedWaiting()).isEqualTo(walk.keptLateWeighted(rig));
          later += walk.lateWeightedWaiting() > walk.lateWeighted() ? 1 : 0;
        }
      }
      assertThat(late).isEqualTo(timeline.lateWeighted());
    }
    assertThat(later).as("walks that are late by waiting").isGreaterThan(100);
  }

  private void keepAll() {
    timeline.decode();
    timeline.keep();
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      walk.keep(rig, 0);
    }
    walk.keepWaits();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void tellsTheSetupRoundAPlace(long seed) {
    decoded(seed);
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      walk.keep(rig, 0);
      for (int at = 0; at < timeline.length(rig); at++) {
        int upTo = setupOf(rig, Math.min(at + 2, timeline.length(rig)));
        assertThat(walk.setupAround(rig, at)).isEqualTo(upTo - setupOf(rig, at));
      }
    }
  }

  private int setupOf(int rig, int jobs) {
    int all = timeline.length(rig);
    timeline.setLength(rig, jobs);
    walk.walk(rig, 0);
    timeline.setLength(rig, all);
    return walk.setupSeconds();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void findsThePlaceThatAddsTheLeastSetup(long seed) {
    decoded(seed);
    SplittableRandom random = new SplittableRandom(seed);
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      walk.keep(rig, 0);
      for (int job = 0; job < batch.jobCount(); job++) {
        if (batch.fits(job, rig) && !stands(job, rig)) {
          int place = walk.cheapestPlace(rig, job, 0, timeline.length(rig), random);
          int least = Integer.MAX_VALUE;
          for (int at = 0; at <= timeline.length(rig); at++) {
            least = Math.min(least, setupNear(rig, job, at));
          }
          assertThat(setupNear(rig, job, place)).isEqualTo(least);
        }
      }
    }
  }

  private boolean stands(int job, int rig) {
    for (int at = 0; at < timeline.length(rig); at++) {
      if (timeline.sequence(rig)[at] == job) {
        return true;
      }
    }
    return false;
  }

  /** Setup that one more job adds up to the job behind it, where its state is kept. */
  private int setupNear(int rig, int job, int at) {
    int length = timeline.length(rig);
    int[] sequence = timeline.sequence(rig);
    int state = 0;
    int before = 0;
    for (int i = 0; i < Math.min(length, at + 1); i++) {
      if (i == at) {
        before = attended(rig, state, sequence[i]);
        break;
      }
      state = next(rig, state, sequence[i]);
    }
    int more = attended(rig, state, job);
    return at == length ? more : more + attended(rig, next(rig, state, job), sequence[at]) - before;
  }

  private int attended(int rig, int state, int job) {
    int request = batch.request(job) * SetupTable.STRIDE;
    return timeline.row(rig, state, request)[request + SetupTable.ATTENDED];
  }

  private int next(int rig, int state, int job) {
    int request = batch.request(job) * SetupTable.STRIDE;
    return timeline.row(rig, state, request)[request + SetupTable.NEXT];
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void letsTheDecodeGiveUpOnlyWhereItIsWorseThanAllowed(long seed) {
    decoded(seed);
    long hard = timeline.hard();
    long soft = batch.softSeconds(timeline);
    long setup = 0;
    int end = 0;
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      walk.walk(rig, 0);
      setup += walk.setupSeconds();
      end = Math.max(end, walk.end());
    }

    Limit limit = new Limit();
    limit.set(hard, soft, setup, end);
    assertThat(timeline.decodeChange(0, 0, 0, 0, limit)).isTrue();
    assertThat(timeline.hard()).isEqualTo(hard);
    assertThat(batch.softSeconds(timeline)).isEqualTo(soft);
    if (soft > 0) {
      limit.set(hard, soft - 1, setup, end);
      assertThat(timeline.decodeChange(0, 0, 0, 0, limit)).isFalse();
    }
  }
}
