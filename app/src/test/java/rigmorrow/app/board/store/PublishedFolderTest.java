package rigmorrow.app.board.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.FloorSolver;

/** The crew has the files of one version or of the other, never none. */
class PublishedFolderTest {
  private static final Batch DAY = Demo.batch(6, 1, LocalDate.of(2026, 3, 18));
  private static final Plan PLAN = FloorSolver.dispatch(DAY);

  @TempDir Path folder;

  /** Another program may hold a file of the draft, or somebody made a folder of the name. */
  @Test
  void putsTheFilesBackWhenTheNewOnesCannotTakeTheirPlace() throws IOException {
    new PublishedFolder(folder, "ours").write(1, DAY, PLAN, new PlanStamp("", ""));
    PublishedFolder failing =
        new PublishedFolder(
            folder,
            "ours",
            (from, to) -> {
              if (from.endsWith("published.new")) {
                throw new AccessDeniedException(from.toString());
              }
              Files.move(from, to);
            });
    assertThatThrownBy(() -> failing.write(2, DAY, PLAN, new PlanStamp("", "")))
        .isInstanceOf(AccessDeniedException.class);
    Path published = folder.resolve(PublishedFolder.NAME);
    assertThat(Files.readString(published.resolve("version.json"))).contains("\"version\":1");
    assertThat(published.resolve("plan.json")).isNotEmptyFile();
    assertThat(folder.resolve("published.old")).doesNotExist();
    PublishedFolder again = new PublishedFolder(folder, "ours");
    again.write(2, DAY, PLAN, new PlanStamp("", ""));
    assertThat(again.recover()).isEqualTo(2);
  }
}
