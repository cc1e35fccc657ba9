package rigmorrow.app.board.desk;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Random;
import rigmorrow.app.board.touch.Touch;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.plan.PlanFigures;

/** A process that keeps one touch after another, and says each that is kept, until it is killed. */
final class KilledBoard {
  private static final int JOBS = 12;

  private KilledBoard() {}

  /** Arguments: the folder of the board, the seed of the touches. */
  public static void main(String[] arguments) {
    Path folder = Path.of(arguments[0]);
    Random random = new Random(Long.parseLong(arguments[1]));
    try (Desk desk =
        Desk.open(
            folder, Demo.batch(JOBS, 1, LocalDate.of(2026, 3, 18)), null, Clock.systemUTC())) {
      say(desk.now());
      while (true) {
        BoardState before = desk.now();
        BoardState after = step(desk, before, random);
        if (after.revision() > before.revision()) {
          say(after);
        }
      }
    }
  }

  private static BoardState step(Desk desk, BoardState now, Random random) {
    int kind = random.nextInt(10);
    if (kind == 0) {
      return desk.undo(now.revision());
    }
    if (kind == 1) {
      return desk.redo(now.revision());
    }
    Touch touch = RandomTouch.of(now, random);
    return desk.attempt(now.revision(), touch).allowed() ? desk.keep(now.revision(), touch) : now;
  }

  private static void say(BoardState state) {
    System.out.println(line(state.revision(), state.plan().figures()));
    System.out.flush();
  }

  /** A revision and the figures of its plan, as one line that tells whether it is whole. */
  static String line(long revision, PlanFigures figures) {
    return revision + " " + figures + ".";
  }
}
