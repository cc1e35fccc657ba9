package rigmorrow.app.board.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.board.touch.Touch;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.shot.Batch;

class DeskTest {
  private static final Batch DAY = Demo.batch(20, 1, LocalDate.of(2026, 3, 18));

  @TempDir Path folder;

  @Test
  void keepsATouchAndTakesItBack() {
    try (Desk desk = Desk.open(folder, DAY, null, Clock.systemUTC())) {
      BoardState first = desk.now();
      String job = first.plan().rigs().get(0).jobs().get(0).job();
      Touch touch = new Touch.LeaveOut(job);
      Tried tried = desk.attempt(1, touch);
      assertThat(tried.allowed()).isTrue();
      BoardState then = desk.keep(1, touch);
      assertThat(then.plan()).isEqualTo(tried.after());
      assertThat(then.revision()).isEqualTo(2);
      assertThatThrownBy(() -> desk.keep(1, touch))
          .isInstanceOf(StaleException.class)
          .hasMessageContaining("Leave out " + job);
      assertThat(desk.undo(2).plan()).isEqualTo(first.plan());
      assertThat(desk.redo(3).plan()).isEqualTo(then.plan());
    }
  }
}
