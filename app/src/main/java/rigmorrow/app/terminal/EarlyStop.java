package rigmorrow.app.terminal;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Lets Ctrl-C (or a termination signal) end a search early with the best plan so far, and a server
 * in order. The JVM answers such a signal by running its shutdown hooks; ours asks the running
 * search to stop, waits until the command has written and printed what it has, and leaves with the
 * command's own exit code. Outside a search, or when the command does not come to an end in time,
 * the JVM leaves with the code of the signal (130 for Ctrl-C).
 */
public final class EarlyStop {
  private static final int PATIENCE_SECONDS = 20;

  private final CountDownLatch finished = new CountDownLatch(1);
  private final CountDownLatch requested = new CountDownLatch(1);
  private volatile boolean searching;
  private volatile int exitCode;

  /** Asks the running search to stop. */
  public void request() {
    requested.countDown();
  }

  /** True once the search was asked to stop. */
  public boolean requested() {
    return requested.getCount() == 0;
  }

  /** Waits until it is asked to stop: for a command that goes on until then, and ends in order. */
  public void await() {
    searching = true;
    try {
      requested.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** From now on a signal keeps the best plan. */
  public void searchBegins() {
    searching = true;
  }

  /** Says that the command is over; must be called before the JVM is left. */
  public void commandEnds(int code) {
    exitCode = code;
    finished.countDown();
  }

  /** Makes signals count; for the process's own main method. */
  public void listen() {
    Runtime.getRuntime().addShutdownHook(new Thread(this::shutDown, "early-stop"));
  }

  private void shutDown() {
    if (!searching || finished.getCount() == 0) {
      return;
    }
    request();
    try {
      if (finished.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        Runtime.getRuntime().halt(exitCode);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
