package rigmorrow.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.solver.dispatch.Dispatcher;
import rigmorrow.solver.fixture.RandomFloors;
import rigmorrow.solver.fixture.RandomSequences;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.RigWalk;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/** What the changes do to the queues, and what is never drawn. */
class ChangesTest {
  private static final int DRAWS = 400;

  static LongStream seeds() {
    return LongStream.range(0, 60);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void areUndoneExactly(long seed) {
    Bench bench = Bench.random(seed);
    bench.drawing(
        change -> {
          Sequences before = bench.plan();
          bench.queues.exchange(change);
          Sequences after = bench.plan();
          assertThat(after).as(change.toString()).isNotEqualTo(before);
          bench.queues.undo(change);
          assertThat(bench.plan()).as(change.toString()).isEqualTo(before);
          bench.queues.exchange(change);
          assertThat(bench.plan()).as(change.toString()).isEqualTo(after);
        });
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void keepEveryJobAndPutItOnRigsThatTakeIt(long seed) {
    Bench bench = Bench.random(seed);
    List<Integer> jobs = jobs(bench.plan());
    bench.drawing(
        change -> {
          bench.queues.exchange(change);
          Sequences now = bench.plan();
          assertThat(jobs(now)).as(change.toString()).isEqualTo(jobs);
          for (int rig = 0; rig < bench.batch.rigCount(); rig++) {
            int on = rig;
            assertThat(now.byRig().get(rig))
                .as(change.toString())
                .allMatch(job -> bench.batch.fits(job, on));
          }
        });
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void leaveFrozenJobsWhereTheyAreAndPinnedOnesPlanned(long seed) {
    CompiledBatch batch = CompiledBatch.of(RandomFloors.withPins(seed, 30));
    Bench bench = new Bench(batch, new Dispatcher(batch).best(() -> false), seed);
    List<List<Integer>> fronts = bench.fronts();
    int pinsLeftOut = batch.pinnedAmong(bench.plan().backlog());
    bench.drawing(
        change -> {
          bench.queues.exchange(change);
          assertThat(bench.fronts()).as(change.toString()).isEqualTo(fronts);
          assertThat(batch.pinnedAmong(bench.plan().backlog()))
              .as(change.toString())
              .isLessThanOrEqualTo(pinsLeftOut);
        });
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void leaveEveryJobWhereTheQueuesSayItIs(long seed) {
    Bench bench = Bench.random(seed);
    bench.drawing(
        change -> {
          bench.queues.exchange(change);
          bench.queues.settle(change);
          for (int queue = 0; queue <= bench.queues.backlog(); queue++) {
            for (int at = 0; at < bench.queues.length(queue); at++) {
              int job = bench.queues.jobs(queue)[at];
              assertThat(bench.queues.queueOf(job)).as(change.toString()).isEqualTo(queue);
              assertThat(bench.queues.placeOf(job)).as(change.toString()).isEqualTo(at);
            }
          }
        });
  }

  @Test
  void areDrawnOfEveryKind() {
    Set<String> kinds = new TreeSet<>();
    for (long seed = 0; seed < 30; seed++) {
      Bench bench = Bench.random(seed);
      bench.drawing(
          change -> {
            kinds.add(kind(change, bench.queues.backlog()));
            bench.queues.exchange(change);
          });
    }
    assertThat(kinds)
        .contains(
            "put within",
            "put between",
            "put several between",
            "put from the backlog",
            "swap within",
            "swap between",
            "swap several between",
            "swap with the backlog");
  }

  private static String kind(Change change, int backlog) {
    boolean put = change.leftCount == 0 || change.rightCount == 0;
    String name = put ? "put" : "swap";
    if (change.left == change.right) {
      // Within one queue a job that is put elsewhere changes places with those it passes.
      return change.leftAt + change.leftCount == change.rightAt ? "put within" : name + " within";
    }
    if (change.left == backlog || change.right == backlog) {
      return name + (put ? " from the backlog" : " with the backlog");
    }
    int most = Math.max(change.leftCount, change.rightCount);
    return name + (most > 1 ? " several between" : " between");
  }

  private static List<Integer> jobs(Sequences plan) {
    List<Integer> jobs = new ArrayList<>(plan.backlog());
    plan.byRig().forEach(jobs::addAll);
    jobs.sort(null);
    return jobs;
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void findPlacesThatAreInTime(long seed) {
    Bench bench = Bench.random(seed);
    bench.timeline.decode();
    bench.timeline.keep();
    for (int rig = 0; rig < bench.batch.rigCount(); rig++) {
      int[] jobs = bench.timeline.sequence(rig);
      int length = bench.timeline.length(rig);
      for (int job = 0; job < bench.batch.jobCount(); job++) {
        int due = bench.batch.due(job);
        int ready = bench.batch.ready(job);
        int first = bench.queues.firstCapturedAfter(rig, due);
        for (int place = 0; place <= length; place++) {
          int before = place == 0 ? 0 : bench.timeline.captureEnd(jobs[place - 1]);
          int then = place == length ? Integer.MAX_VALUE : bench.timeline.captureEnd(jobs[place]);
          assertThat(first > place).isEqualTo(then <= due);
          assertThat(bench.queues.inTime(job, rig, place))
              .isEqualTo((place == 0 || before < due) && then > ready);
        }
      }
    }
    assertThat(bench.queues.inTime(0, bench.queues.backlog(), 0)).isTrue();
  }

  /** Queues to draw changes of. */
  private static final class Bench {
    private final CompiledBatch batch;
    private final WorkQueues queues;
    private final ChangeDraw draw;
    private final TroubleSpots troubles;
    private final Timeline timeline;
    private final RigWalk walk;

    Bench(CompiledBatch batch, Sequences start, long seed) {
      this.batch = batch;
      this.timeline = Timeline.forChanges(batch);
      this.queues = new WorkQueues(batch, timeline);
      this.troubles = new TroubleSpots(batch, timeline);
      this.walk = new RigWalk(batch, timeline);
      queues.set(start);
      this.draw =
          new ChangeDraw(
              batch,
              new Neighbours(batch, timeline),
              queues,
              troubles,
              walk,
              new SplittableRandom(seed));
    }

    /** A start with some jobs in the backlog. */
    static Bench random(long seed) {
      CompiledBatch batch = CompiledBatch.of(RandomFloors.batch(seed));
      return new Bench(batch, RandomSequences.of(batch, new Random(seed), 4), seed);
    }

    /** Draws changes; whatever is done with one is settled before the next. */
    void drawing(Consumer<Change> then) {
      Change change = new Change();
      for (int i = 0; i < DRAWS; i++) {
        timeline.decode();
        timeline.keep();
        troubles.read();
        for (int rig = 0; rig < batch.rigCount(); rig++) {
          walk.keep(rig, 0);
        }
        if (!draw.draw(change)) {
          return;
        }
        then.accept(change);
        queues.settle(change);
      }
    }

    Sequences plan() {
      return queues.sequences(0, 0, 0);
    }

    List<List<Integer>> fronts() {
      List<List<Integer>> fronts = new ArrayList<>();
      for (int rig = 0; rig < batch.rigCount(); rig++) {
        List<Integer> queue = plan().byRig().get(rig);
        fronts.add(queue.subList(0, Math.min(batch.frozen(rig), queue.size())));
      }
      return fronts;
    }
  }
}
