package rigmorrow.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.optaplanner.core.impl.heuristic.move.Move;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.dispatch.Dispatcher;
import rigmorrow.solver.fixture.CheckedPlans;
import rigmorrow.solver.fixture.RandomFloors;
import rigmorrow.solver.fixture.RandomSequences;
import rigmorrow.solver.timeline.CompiledBatch;

/** What the moves do to the queues, and what is never drawn. */
class MovesTest {
  private static final int DRAWS = 400;

  static LongStream seeds() {
    return LongStream.range(0, 60);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void areUndoneExactly(long seed) {
    Batch batch = RandomFloors.batch(seed);
    CompiledBatch compiled = CompiledBatch.of(batch);
    FloorSchedule schedule = randomStart(compiled, seed);
    QuietDirector director = new QuietDirector(schedule);
    SetupAwareMoves.Draw draw = new SetupAwareMoves.Draw(schedule, new Random(seed));
    for (int i = 0; i < DRAWS && draw.hasNext(); i++) {
      Queues before = Queues.of(schedule);
      Move<FloorSchedule> move = draw.next();
      assertThat(move.isMoveDoable(director)).isTrue();
      Move<FloorSchedule> undo = move.doMove(director);
      Queues after = Queues.of(schedule);
      assertThat(after).as(move.toString()).isNotEqualTo(before);
      Move<FloorSchedule> again = undo.doMove(director);
      assertThat(Queues.of(schedule)).as(move.toString()).isEqualTo(before);
      again.doMoveOnly(director);
      assertThat(Queues.of(schedule)).as(move.toString()).isEqualTo(after);
    }
    CheckedPlans.decoded(compiled, batch, schedule.sequences());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void keepEveryJobAndPutItOnRigsThatTakeIt(long seed) {
    Batch batch = RandomFloors.batch(seed);
    CompiledBatch compiled = CompiledBatch.of(batch);
    FloorSchedule schedule = randomStart(compiled, seed);
    List<Integer> jobs = Queues.of(schedule).jobs();
    QuietDirector director = new QuietDirector(schedule);
    SetupAwareMoves.Draw draw = new SetupAwareMoves.Draw(schedule, new Random(seed));
    for (int i = 0; i < DRAWS && draw.hasNext(); i++) {
      Move<FloorSchedule> move = draw.next();
      move.doMoveOnly(director);
      Queues now = Queues.of(schedule);
      assertThat(now.misfits(compiled)).as(move.toString()).isEmpty();
      assertThat(now.jobs()).as(move.toString()).isEqualTo(jobs);
    }
    CheckedPlans.decoded(compiled, batch, schedule.sequences());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void leaveFrozenJobsWhereTheyAreAndPinnedOnesPlanned(long seed) {
    Batch batch = RandomFloors.withPins(seed, 30);
    CompiledBatch compiled = CompiledBatch.of(batch);
    FloorSchedule schedule = FloorSchedule.of(compiled, new Dispatcher(compiled).best(() -> false));
    List<List<Integer>> fronts = Queues.of(schedule).fronts(compiled);
    Set<Integer> leftOut = Queues.of(schedule).pinnedInBacklog(compiled);
    QuietDirector director = new QuietDirector(schedule);
    SetupAwareMoves.Draw draw = new SetupAwareMoves.Draw(schedule, new Random(seed));
    for (int i = 0; i < DRAWS && draw.hasNext(); i++) {
      Move<FloorSchedule> move = draw.next();
      move.doMoveOnly(director);
      Queues now = Queues.of(schedule);
      assertThat(now.fronts(compiled)).as(move.toString()).isEqualTo(fronts);
      assertThat(leftOut).as(move.toString()).containsAll(now.pinnedInBacklog(compiled));
    }
    CheckedPlans.decoded(compiled, batch, schedule.sequences());
  }

  @Test
  void areDrawnOfEveryKind() {
    Set<String> kinds = new TreeSet<>();
    for (long seed = 0; seed < 30; seed++) {
      FloorSchedule schedule = randomStart(CompiledBatch.of(RandomFloors.batch(seed)), seed);
      QuietDirector director = new QuietDirector(schedule);
      SetupAwareMoves.Draw draw = new SetupAwareMoves.Draw(schedule, new Random(seed));
      for (int i = 0; i < DRAWS && draw.hasNext(); i++) {
        Queues before = Queues.of(schedule);
        Move<FloorSchedule> move = draw.next();
        move.doMoveOnly(director);
        kinds.add(before.kind(move, Queues.of(schedule)));
      }
    }
    assertThat(kinds)
        .contains(
            "SegmentMove within",
            "SegmentMove between",
            "SegmentMove of several between",
            "SegmentMove from backlog",
            "SegmentMove to backlog",
            "SegmentSwapMove within",
            "SegmentSwapMove between",
            "SegmentSwapMove of several between",
            "SegmentSwapMove with backlog");
  }

  /** A start with some jobs in the backlog. */
  private static FloorSchedule randomStart(CompiledBatch compiled, long seed) {
    return FloorSchedule.of(compiled, RandomSequences.of(compiled, new Random(seed), 4));
  }
}
