package rigmorrow.model.time;

import rigmorrow.model.check.Require;

/**
 * A time span in whole seconds from the plan's origin.
 *
 * @param start first second
 * @param end exclusive, not before the start
 */
public record Span(int start, int end) {
  public Span {
    Require.that(end >= start, "span.end", end, "at least its start " + start);
  }

  /** Length in seconds. */
  public int seconds() {
    return end - start;
  }

  /** True when both share at least one second; spans that merely touch do not. */
  public boolean overlaps(Span other) {
    return start < other.end && other.start < end;
  }

  /** True when the other lies wholly within this one. */
  public boolean contains(Span other) {
    return start <= other.start && other.end <= end;
  }
}
