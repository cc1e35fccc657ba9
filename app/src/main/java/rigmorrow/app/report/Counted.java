package rigmorrow.app.report;

/** A number with its word. */
public final class Counted {
  private Counted() {}

  /** Such as "1 job" and "2 jobs"; for words that take a plain s. */
  public static String of(long count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }

  /** The same for words that do not take a plain s. */
  public static String of(long count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }
}
