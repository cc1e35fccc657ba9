package rigmorrow.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.JobBuilder;
import rigmorrow.model.RigBuilder;
import rigmorrow.model.floor.Weights;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.RigWalk;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/** Which changes are decoded at all. */
class JudgeTest {
  private static final int TRIES = 1600;

  private final Change change = new Change();

  @Test
  void decodesSeldomWhatChangesNothing() {
    Judge judge = judge(Weights.DEFAULT, List.of(List.of(0, 1, 2, 3), List.of()));

    change.set(0, 1, 1, 0, 2, 1);

    assertThat(decodes(judge)).isBetween(50L, 200L);
  }

  @Test
  void decodesAllOfItWhereChangeoversDoNotCount() {
    Judge judge = judge(new Weights(10, 0, 1, 10), List.of(List.of(0, 1, 2, 3), List.of()));

    change.set(0, 1, 1, 0, 2, 1);

    assertThat(decodes(judge)).isEqualTo(TRIES);
  }

  @Test
  void keepsAtOnceWhatLetsTheLastRigEndSooner() {
    Judge judge = judge(Weights.DEFAULT, List.of(List.of(0, 1, 2, 3), List.of(4)));
    Sequences before = judge.plan();

    change.set(0, 3, 1, 1, 1, 0);

    assertThat(judge.keeps(change, 0)).isTrue();
    assertThat(judge.plan().betterThan(before)).isTrue();
  }

  private long decodes(Judge judge) {
    long before = judge.decodes();
    for (int i = 0; i < TRIES; i++) {
      judge.keeps(change, 0);
    }
    return judge.decodes() - before;
  }

  /** Five jobs of one setup that nobody waits for. */
  private static Judge judge(Weights weights, List<List<Integer>> orders) {
    List<ShotJob> jobs = new ArrayList<>();
    for (int job = 0; job < 5; job++) {
      jobs.add(new JobBuilder("job-" + job).build());
    }
    CompiledBatch batch =
        CompiledBatch.of(
            new Batch(
                FloorFixtures.floor()
                    .rigs(FloorFixtures.platform().build(), new RigBuilder("other").build())
                    .weights(weights)
                    .build(),
                new ShotList(FloorFixtures.MONDAY, 1, jobs, List.of())));
    List<Integer> backlog = new ArrayList<>();
    for (int job = orders.get(0).size() + orders.get(1).size(); job < 5; job++) {
      backlog.add(job);
    }
    Timeline timeline = Timeline.forChanges(batch);
    Judge judge =
        new Judge(
            batch,
            timeline,
            new WorkQueues(batch, timeline),
            new TroubleSpots(batch, timeline),
            new RigWalk(batch, timeline),
            new SplittableRandom(1));
    judge.standAt(
        new Sequences(
            orders, backlog, 0, backlog.stream().mapToLong(batch::leftOutWeight).sum(), 0));
    return judge;
  }
}
