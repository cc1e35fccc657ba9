package rigmorrow.app.board.server;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.javalin.http.Context;
import io.javalin.http.sse.SseClient;
import io.javalin.http.sse.SseHandler;
import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.api.BoardJson;
import rigmorrow.app.board.api.Refusal;
import rigmorrow.app.board.desk.Desk;
import rigmorrow.app.board.desk.Glance;
import rigmorrow.app.board.desk.SearchProgress;
import rigmorrow.app.board.make.Searches;
import rigmorrow.app.board.view.WhatIfView.ComparisonView;
import rigmorrow.app.board.whatif.ComparisonDesk;
import rigmorrow.app.board.whatif.WhatIfViews;

/**
 * Tells every tab what changed, as server-sent events. Each stream has a thread of its own, so that
 * a tab that stops reading holds up nobody else; what happens while it is busy is told as one.
 */
final class Events implements AutoCloseable {
  private static final int MOST_STREAMS = 64;

  /** More often no tab needs to hear; a search may find better plans by the hundred. */
  private static final long PAUSE_MILLIS = 100;

  private final Desk desk;
  private final ComparisonDesk comparisons;
  private final Duration keepAlive;
  private final Semaphore room = new Semaphore(MOST_STREAMS);
  private final AtomicInteger open = new AtomicInteger();
  private final SseHandler handler = new SseHandler(0, this::serve);
  private long changes;
  private boolean closed;

  Events(Desk desk, ComparisonDesk comparisons, Duration keepAlive) {
    this.desk = desk;
    this.comparisons = comparisons;
    this.keepAlive = keepAlive;
    desk.listen(this::changed);
    comparisons.listen(this::changed);
  }

  /** Refuses to say what a stream would be: it has no end and so no length. */
  static void head(Context context) {
    context.header("Allow", "GET");
    throw Refusal.of(405, "This address sends events as they happen; accepted: GET.");
  }

  /** Begins a stream. */
  void stream(Context context) {
    String accept = context.header("Accept");
    if (accept == null || !accept.contains("text/event-stream")) {
      throw Refusal.malformed("This address sends text/event-stream; accepted: to take that.");
    }
    if (!room.tryAcquire()) {
      throw Refusal.of(503, "Too many tabs are open; accepted: at most " + MOST_STREAMS + ".");
    }
    boolean begun = false;
    try {
      handler.handle(context);
      begun = true;
    } finally {
      if (!begun) {
        room.release(); // The tab went away before its stream began.
      }
    }
  }

  /** How many streams are open. */
  int open() {
    return open.get();
  }

  /** Ends every stream. */
  @Override
  public synchronized void close() {
    closed = true;
    notifyAll();
  }

  private synchronized void changed() {
    changes++;
    notifyAll();
  }

  private void serve(SseClient client) {
    open.incrementAndGet();
    try {
      long told = -1;
      long shown = -1;
      @Nullable SearchProgress search = null;
      @Nullable ComparisonView comparison = null;
      while (!client.terminated()) {
        long now = await(told);
        if (now < 0) {
          return;
        }
        if (now == told) {
          client.sendComment("still here");
          continue;
        }
        told = now;
        Glance newest = desk.glance();
        SearchProgress progress = desk.progress();
        // Apart from the search, which is another each time while it runs.
        if (newest.change() != shown) {
          client.sendEvent(
              "board",
              "{\"revision\":%d,\"change\":%d}"
                  .formatted(newest.state().revision(), newest.change()));
        }
        if (!progress.equals(search) && !client.terminated()) {
          client.sendEvent("search", new String(BoardJson.bytes(Searches.of(progress)), UTF_8));
        }
        ComparisonView compared =
            WhatIfViews.comparison(comparisons.change(), comparisons.progress());
        if (!compared.equals(comparison) && !client.terminated()) {
          client.sendEvent("whatif", new String(BoardJson.bytes(compared), UTF_8));
        }
        shown = newest.change();
        search = progress;
        comparison = compared;
        Thread.sleep(PAUSE_MILLIS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      open.decrementAndGet();
      room.release();
    }
  }

  /**
   * Waits for news.
   *
   * @param told number of the change that was told last
   * @return number of the newest change; the same when it is time for a sign of life, below 0 when
   *     it is time to go
   */
  private synchronized long await(long told) throws InterruptedException {
    long until = System.nanoTime() + keepAlive.toNanos();
    while (!closed && changes == told) {
      long millis = (until - System.nanoTime()) / 1_000_000;
      if (millis <= 0) {
        break;
      }
      wait(millis);
    }
    return closed ? -1 : changes;
  }
}
