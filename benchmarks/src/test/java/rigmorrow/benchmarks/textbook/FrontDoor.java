package rigmorrow.benchmarks.textbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;

/**
 * The way a planner takes: two files are written and read back, planned by the ordinary solver, and
 * the plan is re-examined by the independent checker. One solver, a fixed seed and a number of
 * decodes, so that it always comes to the same.
 */
final class FrontDoor {
  private static final long SEED = 1;

  private FrontDoor() {}

  /** What the plan comes to; it breaks no rule. */
  static PlanFigures figures(TextbookProblem problem, long decodes) {
    try {
      Path folder = Files.createTempDirectory("textbook");
      try {
        TextbookFiles.write(problem, folder);
        return plan(TextbookFiles.read(folder), decodes).figures();
      } finally {
        delete(folder);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InputException e) {
      throw new AssertionError(problem.name() + " is refused by the readers", e);
    }
  }

  private static Plan plan(Batch batch, long decodes) {
    Plan plan = FloorSolver.solve(batch, SolverSettings.steps(decodes, SEED), SolveListener.NONE);
    assertThat(PlanChecker.check(batch, plan)).as(batch.floor().name()).isEmpty();
    assertThat(plan.figures().hard()).as(batch.floor().name()).isZero();
    return plan;
  }

  private static void delete(Path folder) throws IOException {
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      for (Path file : files) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }
}
