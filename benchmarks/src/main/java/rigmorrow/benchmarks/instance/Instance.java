package rigmorrow.benchmarks.instance;

import java.io.IOException;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.shot.Batch;

/**
 * One batch that peers are compared on. It is read when it is needed: large ones fill the memory.
 *
 * @param name unique in its tier
 * @param group what it is averaged with: its size, or all days
 * @param bestKnown points of the best plan that is known from outside; null when none is
 * @param limit planning time that is usual for it; null when there is no usual one
 * @param source reads it
 */
public record Instance(
    String name, String group, @Nullable Long bestKnown, @Nullable Duration limit, Source source) {
  /** Reads one batch. */
  @FunctionalInterface
  public interface Source {
    /**
     * The batch.
     *
     * @throws IOException when a file cannot be read
     * @throws InputException when something is wrong with one
     */
    Batch read() throws IOException, InputException;
  }
}
