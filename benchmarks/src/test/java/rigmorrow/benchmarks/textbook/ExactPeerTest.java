package rigmorrow.benchmarks.textbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigmorrow.benchmarks.peer.CpSatPeer;
import rigmorrow.model.outside.Figure;
import rigmorrow.model.outside.OutsideCheck;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;

/** The exact peer on instances whose optimum is known; skipped where their folder is not there. */
class ExactPeerTest {
  private static final SolverSettings LONG = SolverSettings.steps(300_000, 1);

  @ParameterizedTest
  @CsvSource({
    "I_6_2_S_1-9_1, 74",
    "I_8_3_S_1-9_1, 72",
    "I_10_2_S_1-9_1, 169",
    "I_12_5_S_1-9_1, 80"
  })
  void findsTheProvenOptimum(String name, int optimum) {
    String file = "upmsp/small/" + name + ".txt";
    OutsideCheck check =
        OutsideCheck.of(
            name, "proven", ExactPeerTest.class, () -> List.of(makespan(name, file, optimum)));
    Reference.needed(file, check).verify();
  }

  private static Figure makespan(String name, String file, int optimum) {
    TextbookProblem problem = Reference.reading(file, LiteratureFiles::parallelMachines).get();
    Batch batch = TextbookBatch.of(problem);
    Plan plan = new CpSatPeer().plan(batch, LONG, SolveListener.NONE);
    assertThat(PlanChecker.check(batch, plan)).as(name).isEmpty();
    return Figure.equal("", optimum, plan.figures().finishedAt());
  }
}
