package rigmorrow.app.whatif;

/** How long something takes, in words. */
public final class Lengths {
  private static final long SECONDS_PER_MINUTE = 60;
  private static final long SECONDS_PER_HOUR = 3600;

  private Lengths() {}

  /** A length of time to be read at a glance: "40 s", "12 min", "3 h 5 min". */
  public static String glance(long seconds) {
    if (seconds < 2 * SECONDS_PER_MINUTE) {
      return seconds + " s";
    }
    long minutes = (seconds + SECONDS_PER_MINUTE / 2) / SECONDS_PER_MINUTE;
    if (seconds < SECONDS_PER_HOUR) {
      return minutes + " min";
    }
    long rest = minutes % SECONDS_PER_MINUTE;
    return minutes / SECONDS_PER_MINUTE + " h" + (rest == 0 ? "" : " " + rest + " min");
  }
}
