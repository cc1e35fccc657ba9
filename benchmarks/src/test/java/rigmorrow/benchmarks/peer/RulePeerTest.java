package rigmorrow.benchmarks.peer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.benchmarks.textbook.LiteratureFiles;
import rigmorrow.benchmarks.textbook.TextbookFiles;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;

/** One rig, three jobs, orders worked out by hand. */
class RulePeerTest {
  /**
   * Due at 9, 5 and 7. From the start the setups are 1, 2 and 3; from the first job 4 to the second
   * and 2 to the third.
   */
  private static final String INSTANCE =
      "Problem Instance: 1\nProblem Size: 3\nProcess Times:\n3\n4\n5\nWeights:\n1\n1\n1\n"
          + "Duedates:\n9\n5\n7\nSetup Times:\n"
          + "-1 0 1\n-1 1 2\n-1 2 3\n"
          + "0 0 0\n0 1 4\n0 2 2\n"
          + "1 0 1\n1 1 0\n1 2 1\n"
          + "2 0 1\n2 1 1\n2 2 0\n";

  @TempDir private Path folder;

  @Test
  void takesWhatIsDueSoonestFirst() throws IOException, InputException {
    assertThat(order(RulePeer.dueDate())).containsExactly("J2", "J3", "J1");
  }

  @Test
  void takesTheLeastChangeoverNext() throws IOException, InputException {
    assertThat(order(RulePeer.changeover())).containsExactly("J1", "J3", "J2");
  }

  private List<String> order(Peer peer) throws IOException, InputException {
    Path file = folder.resolve("instance.txt");
    Files.writeString(file, INSTANCE);
    TextbookFiles.write(LiteratureFiles.tardinessWithSetups(file), folder);
    Batch batch = TextbookFiles.read(folder);
    return peer
        .plan(batch, SolverSettings.steps(1, 1), SolveListener.NONE)
        .rigs()
        .get(0)
        .jobs()
        .stream()
        .map(PlannedJob::job)
        .toList();
  }
}
