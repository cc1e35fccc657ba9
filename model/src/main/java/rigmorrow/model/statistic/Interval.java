package rigmorrow.model.statistic;

/**
 * A figure and where it would lie with other items of the same kind, in 95 of 100 cases.
 *
 * @param middle the figure of the items there are
 * @param low 2.5th percentile
 * @param high 97.5th percentile
 * @param count of items
 */
public record Interval(double middle, double low, double high, int count) {
  /** True where the items cannot tell on which side of 0 the figure lies. */
  public boolean holdsZero() {
    return low <= 0 && high >= 0;
  }

  /** The interval of so many times the figure. */
  public Interval times(double factor) {
    double one = low * factor;
    double other = high * factor;
    return new Interval(middle * factor, Math.min(one, other), Math.max(one, other), count);
  }

  /** The interval of the figure and something fixed besides. */
  public Interval plus(double fixed) {
    return new Interval(middle + fixed, low + fixed, high + fixed, count);
  }
}
