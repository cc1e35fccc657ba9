package rigmorrow.model.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * One check from outside: figures of one source, held against ours by a test and listed on the
 * page. Ours are worked out once, when they are first asked for.
 */
public final class OutsideCheck {
  /** More figures than that are counted on the page, not listed. */
  private static final int MOST_LISTED = 6;

  private final String what;
  private final String source;
  private final Class<?> test;
  private final Supplier<List<Figure>> work;
  private final String missing;
  private List<Figure> figures;

  private OutsideCheck(
      String what, String source, Class<?> test, Supplier<List<Figure>> work, String missing) {
    this.what = what;
    this.source = source;
    this.test = test;
    this.work = work;
    this.missing = missing;
  }

  /**
   * @param what is checked; no two checks of a module share it
   * @param source where the figures stand
   * @param test class that runs the check
   * @param figures ours beside those from outside, at least one
   */
  public static OutsideCheck of(
      String what, String source, Class<?> test, Supplier<List<Figure>> figures) {
    return new OutsideCheck(what, source, test, figures, "");
  }

  /** The same check, skipped for a reason; an empty reason skips nothing. */
  public OutsideCheck skippedFor(String reason) {
    return new OutsideCheck(what, source, test, work, reason);
  }

  /** Fails with every figure of ours that is not what it should be. */
  public void verify() {
    assumeTrue(missing.isEmpty(), () -> what + ": " + missing);
    assertThat(figures()).as("%s, %s", what, source).isNotEmpty().allMatch(Figure::holds);
  }

  /** False when something is not there that it needs. */
  boolean available() {
    return missing.isEmpty();
  }

  /** The beginning of its row, which tells it from others. */
  String key() {
    return "| " + what + " |";
  }

  /** Its row of the page's table. */
  String row() {
    return key()
        + String.join(
            " | ",
            List.of(
                " " + source,
                cell(Figure::expected),
                many() ? agreeing() : cell(Figure::ours),
                test.getSimpleName()))
        + " |";
  }

  private boolean many() {
    return figures().size() > MOST_LISTED;
  }

  private String agreeing() {
    return figures().stream().filter(Figure::holds).count() + " agree";
  }

  private String cell(Function<Figure, String> side) {
    return many()
        ? figures().size() + " values"
        : figures().stream()
            .map(figure -> (figure.name() + " " + side.apply(figure)).strip())
            .collect(Collectors.joining("; "));
  }

  private synchronized List<Figure> figures() {
    if (figures == null) {
      figures = List.copyOf(work.get());
    }
    return figures;
  }

  @Override
  public String toString() {
    return what;
  }
}
