package rigmorrow.app.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * The cores of the machine, which only one long work at a time may have: two at once would each get
 * half of them, and what is stopped by time would come out worse for it.
 */
public final class Cores {
  private final List<Share> shares = new ArrayList<>();

  /**
   * Somebody who may want the cores.
   *
   * @param busy true while they have them; asked by any thread
   * @param sentence what the others are told meanwhile, and what they can do
   */
  public synchronized Share share(BooleanSupplier busy, Supplier<String> sentence) {
    Share share = new Share(busy, sentence);
    shares.add(share);
    return share;
  }

  /** One who may want the cores. */
  public final class Share {
    private final BooleanSupplier busy;
    private final Supplier<String> sentence;

    private Share(BooleanSupplier busy, Supplier<String> sentence) {
      this.busy = busy;
      this.sentence = sentence;
    }

    /**
     * Says at once what {@link #begin} would say, for what takes a while to prepare.
     *
     * @throws CoresTakenException when somebody else has the cores
     */
    public void requireFree() {
      synchronized (Cores.this) {
        for (Share other : shares) {
          if (other != this && other.busy.getAsBoolean()) {
            throw new CoresTakenException(other.sentence.get());
          }
        }
      }
    }

    /**
     * Begins something.
     *
     * @param start begins it and is back at once; from then on this share is busy
     * @throws CoresTakenException when somebody else has the cores
     */
    public void begin(Runnable start) {
      synchronized (Cores.this) {
        requireFree();
        start.run();
      }
    }
  }
}
