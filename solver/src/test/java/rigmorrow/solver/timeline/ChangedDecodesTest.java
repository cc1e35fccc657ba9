package rigmorrow.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.solver.fixture.RandomFloors;
import rigmorrow.solver.fixture.RandomSequences;

/** A change that is decoded from the middle on comes to the same as the whole from nothing. */
class ChangedDecodesTest {
  private static final int CHANGES = 60;

  static LongStream seeds() {
    return LongStream.range(2000, 2120);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void comeToTheSameAsTheWholeFromNothing(long seed) {
    CompiledBatch batch = CompiledBatch.of(RandomFloors.batch(seed));
    Random random = new Random(seed);
    Timeline timeline = Timeline.forChanges(batch);
    List<List<Integer>> kept = new ArrayList<>();
    Sequences start = RandomSequences.of(batch, random, 6);
    for (List<Integer> rig : start.byRig()) {
      kept.add(new ArrayList<>(rig));
    }
    kept.add(new ArrayList<>(start.backlog()));
    write(batch, kept, timeline);
    timeline.decode();
    timeline.keep();
    Limit limit = new Limit();
    for (int i = 0; i < CHANGES; i++) {
      List<List<Integer>> changed = new ArrayList<>();
      kept.forEach(rig -> changed.add(new ArrayList<>(rig)));
      // The one behind the last rig is the backlog.
      int one = random.nextInt(batch.rigCount() + 1);
      int other = random.nextInt(batch.rigCount() + 1);
      int oneFrom = random.nextInt(changed.get(one).size() + 1);
      int otherFrom = other == one ? oneFrom : random.nextInt(changed.get(other).size() + 1);
      change(changed, one, oneFrom, other, otherFrom, random);
      write(batch, changed, timeline);
      if (i % 5 == 0) {
        timeline.decode(); // As a loss is measured: it is not kept.
      }
      // Some are given up on the way, which must leave nothing behind.
      limit.set(Long.MAX_VALUE, i % 3 == 0 ? random.nextInt(200_000) : Long.MAX_VALUE, 0, 0);
      if (timeline.decodeChange(one, oneFrom, other, otherFrom, limit)) {
        assertSameAsFromNothing(batch, changed, timeline);
        if (random.nextBoolean()) {
          timeline.keep();
          kept = changed;
        }
      } else {
        assertThatIllegalStateException().isThrownBy(timeline::keep);
      }
    }
  }

  /** What stands behind the two places is mixed, and some of it changes rigs where it fits. */
  private static void change(
      List<List<Integer>> byRig, int one, int oneFrom, int other, int otherFrom, Random random) {
    List<Integer> left = byRig.get(one);
    List<Integer> right = byRig.get(other);
    List<Integer> tail = left.subList(oneFrom, left.size());
    if (one != other && !tail.isEmpty() && random.nextBoolean()) {
      right.add(otherFrom, tail.remove(random.nextInt(tail.size())));
    } else {
      Collections.shuffle(tail, random);
    }
  }

  @Test
  void doNotDecodeWhatComesBeforeAgain() {
    CompiledBatch batch = CompiledBatch.of(RandomFloors.batch(7));
    Timeline timeline = Timeline.forChanges(batch);
    List<List<Integer>> kept = new ArrayList<>();
    for (List<Integer> rig : RandomSequences.of(batch, new Random(7), 1000).byRig()) {
      kept.add(new ArrayList<>(rig));
    }
    write(batch, kept, timeline);
    timeline.decode();
    timeline.keep();
    int end = timeline.finishedAt();
    List<Integer> longest = Collections.max(kept, Comparator.comparingInt(List::size));
    int rig = kept.indexOf(longest);
    Collections.reverse(longest.subList(0, longest.size() / 2));
    write(batch, kept, timeline);

    // Nothing is said of the front that was turned round, so it is taken as it was.
    timeline.decodeChange(rig, longest.size(), rig, longest.size(), new Limit());
    assertThat(timeline.finishedAt()).isEqualTo(end);

    timeline.decodeChange(rig, 0, rig, 0, new Limit());
    assertThat(timeline.finishedAt()).isNotEqualTo(end);
  }

  private static void write(CompiledBatch batch, List<List<Integer>> byRig, Timeline timeline) {
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      for (int at = 0; at < byRig.get(rig).size(); at++) {
        timeline.sequence(rig)[at] = byRig.get(rig).get(at);
      }
      timeline.setLength(rig, byRig.get(rig).size());
    }
  }

  private static void assertSameAsFromNothing(
      CompiledBatch batch, List<List<Integer>> byRig, Timeline timeline) {
    Timeline whole = new Timeline(batch);
    write(batch, byRig, whole);
    whole.decode();
    assertThat(timeline.hard()).isEqualTo(whole.hard());
    assertThat(timeline.lateWeighted()).isEqualTo(whole.lateWeighted());
    assertThat(timeline.changeoverSeconds()).isEqualTo(whole.changeoverSeconds());
    assertThat(timeline.finishedAt()).isEqualTo(whole.finishedAt());
    for (int rig = 0; rig < batch.rigCount(); rig++) {
      assertThat(timeline.endOf(rig)).isEqualTo(whole.endOf(rig));
      for (int job : byRig.get(rig)) {
        assertThat(timeline.captureEnd(job)).isEqualTo(whole.captureEnd(job));
      }
    }
  }
}
