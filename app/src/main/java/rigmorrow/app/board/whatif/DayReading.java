package rigmorrow.app.board.whatif;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rigmorrow.app.files.FileFailures;
import rigmorrow.app.report.Counted;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.solver.whatif.Past;

/**
 * Reads past days on a thread of its own, once, when somebody first asks: that takes seconds, and
 * who opens a board for the day's plan need not wait for them.
 */
final class DayReading {
  private static final Logger LOG = LoggerFactory.getLogger(DayReading.class);

  /** How far it is. */
  enum State {
    /** The board was started without days. */
    NONE,
    /** Nobody has asked, or they are being read. */
    READING,
    /** They are there. */
    READY,
    /** Something is wrong with them. */
    REFUSED
  }

  /**
   * Days as they are known at a moment.
   *
   * @param days empty unless they are ready
   * @param problems with them; empty unless they are refused
   * @param sentence what there is to say of them
   */
  record Days(State state, List<Past> days, List<InputProblem> problems, String sentence) {
    Days {
      days = List.copyOf(days);
      problems = List.copyOf(problems);
    }
  }

  private final @Nullable DaySource source;
  private final BiConsumer<DaySource, List<Past>> ready;
  private final Runnable changed;
  private volatile Days now;
  private @Nullable Thread thread;

  /**
   * @param source null for none
   * @param ready takes the days before anybody else sees them
   * @param changed told when the days are there or refused
   */
  DayReading(
      @Nullable DaySource source, BiConsumer<DaySource, List<Past>> ready, Runnable changed) {
    this.source = source;
    this.ready = ready;
    this.changed = changed;
    this.now =
        source == null
            ? days(
                State.NONE,
                "The board was started without past days, so there is nothing to"
                    + " compare scenarios on.")
            : days(State.READING, "The past days are being read.");
  }

  private static Days days(State state, String sentence) {
    return new Days(state, List.of(), List.of(), sentence);
  }

  /** What is known now; begins to read where nobody has asked before. */
  synchronized Days ask() {
    DaySource from = source;
    if (from != null && thread == null) {
      thread = new Thread(() -> read(from), "past days");
      thread.setDaemon(true);
      thread.start();
    }
    return now;
  }

  /** What is known now. */
  Days now() {
    return now;
  }

  private void read(DaySource from) {
    try {
      List<Past> days = from.days();
      ready.accept(from, days);
      now = new Days(State.READY, days, List.of(), sentence(days));
    } catch (InputException e) {
      now =
          new Days(
              State.REFUSED,
              List.of(),
              e.problems(),
              Counted.of(e.problems().size(), "problem")
                  + " with the past days. Mend them and start the board again.");
    } catch (IOException e) {
      now = days(State.REFUSED, "The past days cannot be read. " + FileFailures.sentence(e));
    } catch (RuntimeException | Error e) {
      // Said first: where memory has run out, the log may fail too.
      now = days(State.REFUSED, "The past days could not be read: a fault of the program.");
      LOG.error("The past days could not be read", e);
    }
    changed.run();
  }

  private static String sentence(List<Past> days) {
    String jobs =
        Counted.of(
            days.stream().mapToLong(day -> day.batch().shotList().jobs().size()).sum(), "job");
    return days.size() == 1
        ? "Compared on one past day, " + days.get(0).name() + ", with " + jobs + "."
        : "Compared on "
            + days.size()
            + " past days from "
            + days.get(0).name()
            + " to "
            + days.get(days.size() - 1).name()
            + ", with "
            + jobs
            + " in all.";
  }

  /** Waits until nothing is read any more, or for so long. */
  void join(Duration limit) {
    Thread reading;
    synchronized (this) {
      reading = thread;
    }
    if (reading != null) {
      try {
        reading.join(limit.toMillis());
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
  }
}
