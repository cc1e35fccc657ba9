package rigmorrow.app.planning;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Those who asked to be told when something changes. May be used by any thread. */
public final class Listeners {
  private static final Logger LOG = LoggerFactory.getLogger(Listeners.class);

  private final List<Runnable> all = new CopyOnWriteArrayList<>();
  private final String what;

  /**
   * @param what changes, for the log
   */
  public Listeners(String what) {
    this.what = what;
  }

  /**
   * Adds one.
   *
   * @param listener called after every change, on the thread that made it; must be quick
   */
  public void add(Runnable listener) {
    all.add(listener);
  }

  /**
   * Tells all of them; one that fails keeps nobody else from being told. Hold nothing meanwhile.
   */
  public void tell() {
    for (Runnable listener : all) {
      try {
        listener.run();
      } catch (RuntimeException e) {
        LOG.warn("Somebody who asked to be told of {} could not be: {}", what, e.toString());
      }
    }
  }
}
