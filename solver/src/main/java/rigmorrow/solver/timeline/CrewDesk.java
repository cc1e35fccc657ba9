package rigmorrow.solver.timeline;

/**
 * The operators of one decode: who is free from when, and who serves a request. A request is served
 * by whoever can start first; of several, by the one with the fewest skills.
 */
final class CrewDesk {
  private static final int NUMBER_BITS = 5;

  /** Above every second there is. */
  private static final int OUT_BIT = 40;

  private static final int NUMBER_MASK = (1 << NUMBER_BITS) - 1;

  private final int[][] hours;

  /** Second from which an operator is free; never before the span that {@link #closes} ends. */
  private final int[] freeAt;

  /** End of the working span an operator is in. */
  private final int[] closes;

  private final int[] span;
  private final int all;

  /** Bits of the operators who serve the request that was asked last. */
  private int chosen;

  private int lead;

  /** Second of the last request. */
  private int asked;

  CrewDesk(CompiledBatch batch, Moment now) {
    this.hours = batch.crewHours;
    this.freeAt = now.crewFreeAt;
    this.closes = now.crewCloses;
    this.span = now.crewSpan;
    this.all = batch.allOperators;
  }

  /** Everybody is free from the start. */
  void open() {
    for (int i = 0; i < freeAt.length; i++) {
      freeAt[i] = hours[i][0];
      closes[i] = hours[i][1];
      span[i] = 0;
    }
  }

  /**
   * First second from {@code time} on at which the people are free for so long. Nobody is taken
   * until {@link #take}.
   *
   * @param leads operators who may be in charge, as bits; when there is none, anybody is taken
   *     after the plan's end, which breaks a hard rule
   * @param two true when a second person, whoever it is, must be there; a crew of one does it after
   *     the plan's end
   */
  int ask(int leads, boolean two, int time, int seconds) {
    asked = time;
    if (leads != 0 && !two) {
      return askOne(leads, time, seconds);
    }
    boolean enough = !two || hours.length > 1;
    int from = leads != 0 && enough ? time : Math.max(time, hours[0][hours[0].length - 2]);
    int who = leads == 0 ? all : leads;
    return two && enough ? askTwo(who, from, seconds) : askOne(who, from, seconds);
  }

  private int askOne(int leads, int time, int seconds) {
    long best = soonest(leads, time, seconds);
    lead = (int) best & NUMBER_MASK;
    chosen = 1 << lead;
    return (int) (best >> NUMBER_BITS);
  }

  /** Moves on to the next second at which a lead and a second person could both start. */
  private int askTwo(int leads, int time, int seconds) {
    int now = time;
    while (true) {
      long first = soonest(leads, now, seconds);
      lead = (int) first & NUMBER_MASK;
      long second = soonest(all & ~(1 << lead), now, seconds);
      int firstStart = (int) (first >> NUMBER_BITS);
      int secondStart = (int) (second >> NUMBER_BITS);
      int meet = Math.max(firstStart, secondStart);
      if (meet == now || firstStart == secondStart) {
        chosen = 1 << lead | 1 << ((int) second & NUMBER_MASK);
        return meet;
      }
      now = meet;
    }
  }

  /**
   * The soonest start with the operator's number below it; the least skilled wins a tie. Asks
   * everybody and puts those who may not behind all others: a loop that always has the same length
   * costs less than one that skips. Whether the span is long enough is asked of the first only;
   * where it is not, everybody is asked again with care.
   */
  private long soonest(int who, int time, int seconds) {
    long best = Long.MAX_VALUE;
    for (int one = 0; one < freeAt.length; one++) {
      long start = Math.max(time, freeAt[one]) | (long) (~who >>> one & 1) << OUT_BIT;
      best = Math.min(best, start << NUMBER_BITS | one);
    }
    int first = (int) best & NUMBER_MASK;
    int start = (int) (best >> NUMBER_BITS);
    return closes[first] - start >= seconds ? best : soonestWithCare(who, time, seconds);
  }

  private long soonestWithCare(int who, int time, int seconds) {
    long best = Long.MAX_VALUE;
    for (int rest = who; rest != 0; rest &= rest - 1) {
      int one = Integer.numberOfTrailingZeros(rest);
      if (closes[one] <= asked) {
        // No later request is for an earlier second: whoever rested since then need not be looked
        // at with care each time.
        moveOn(one, asked);
      }
      best = Math.min(best, (long) startOf(one, time, seconds) << NUMBER_BITS | one);
    }
    return best;
  }

  /** Takes those who were found by the last {@link #ask}. */
  void take(int end) {
    for (int rest = chosen; rest != 0; rest &= rest - 1) {
      int one = Integer.numberOfTrailingZeros(rest);
      freeAt[one] = end;
      if (end >= closes[one]) {
        moveOn(one, end);
      }
    }
  }

  private void moveOn(int one, int end) {
    int[] spans = hours[one];
    int at = span[one];
    while (spans[at + 1] <= end && at + 2 < spans.length) {
      at += 2;
    }
    span[one] = at;
    closes[one] = spans[at + 1];
    freeAt[one] = Math.max(end, spans[at]);
  }

  /** Bits of those who were found by the last {@link #ask}. */
  int chosen() {
    return chosen;
  }

  /** Who of them is in charge. */
  int lead() {
    return lead;
  }

  private int startOf(int one, int time, int seconds) {
    int start = Math.max(time, freeAt[one]);
    return closes[one] - start >= seconds ? start : laterStart(one, start, seconds);
  }

  private int laterStart(int one, int from, int seconds) {
    int[] spans = hours[one];
    int at = span[one];
    int start = from;
    while (spans[at + 1] - start < seconds) {
      at += 2;
      start = Math.max(start, spans[at]);
    }
    return start;
  }
}
