package rigmorrow.app.board.server;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rigmorrow.app.board.api.BoardJson;
import rigmorrow.app.board.desk.BoardState;
import rigmorrow.app.board.desk.Desk;
import rigmorrow.app.board.make.Trials;
import rigmorrow.app.board.route.Shown;
import rigmorrow.app.board.touch.Touch;
import rigmorrow.model.plan.RigPlan;

/**
 * Tries touches in the background when a board is opened, so that the planner's first is as quick
 * as the hundredth: a JVM takes a while to compile what it runs. Nothing is kept.
 */
final class WarmUp implements Runnable {
  private static final Logger LOG = LoggerFactory.getLogger(WarmUp.class);
  private static final int TOUCHES = 120;
  private static final int BOARDS = 20;

  private final Desk desk;
  private final Shown shown;

  WarmUp(Desk desk, Shown shown) {
    this.desk = desk;
    this.shown = shown;
  }

  /** Begins, and does not hold up the end of the program. */
  void begin() {
    Thread thread = new Thread(this, "board-warm-up");
    thread.setDaemon(true);
    thread.setPriority(Thread.MIN_PRIORITY);
    thread.start();
  }

  @Override
  public void run() {
    try {
      for (int i = 0; i < BOARDS; i++) {
        BoardJson.bytes(shown.board());
      }
      int tried = 0;
      while (tried < TOUCHES) {
        int before = tried;
        for (RigPlan rig : desk.now().plan().rigs()) {
          tried += tries(rig, tried / desk.now().plan().rigs().size());
        }
        if (tried == before) {
          return;
        }
      }
    } catch (RuntimeException e) {
      // The planner was quicker: a plan was changed, a search begun, or the board closed.
      LOG.debug("warm-up ended early", e);
    }
  }

  private int tries(RigPlan rig, int round) {
    int jobs = rig.jobs().size();
    if (jobs < 2) {
      return 0;
    }
    BoardState now = desk.now();
    String job = rig.jobs().get(1 + round % (jobs - 1)).job();
    BoardJson.bytes(Trials.of(desk.attempt(now.revision(), new Touch.Move(job, rig.rig(), 0))));
    return 1;
  }
}
