package rigmorrow.data.table;

import java.util.List;
import java.util.stream.IntStream;

/** Finds the header where titles stand above it. */
public final class HeaderRow {
  /** As many rows that are not blank are looked at; a title takes a few. */
  public static final int MOST_LOOKED_AT = 10;

  /** One word of a title may well be nearly that of a header. */
  private static final int FEWEST_LIKELY = 2;

  private HeaderRow() {}

  /**
   * Which of the rows is the header: the first one, unless it lacks a header that is needed and
   * exactly one of those below it has them all, and all above that one are titles: a row with any
   * header that is known is a header with a slip in it, and what is below it are its jobs. Where
   * none is found so, it is the one below titles that looks most like a header; it lacks one that
   * is needed, so that the file is refused, and the problem names the row to be mended.
   *
   * @param rows the first ones of a file that are not blank; more than are looked at may follow
   * @return its place among them, 0 where there is none
   */
  public static int in(List<TableRow> rows, HeaderJudge judge) {
    if (rows.isEmpty() || judge.complete(rows.get(0))) {
      return 0;
    }
    int[] complete =
        IntStream.range(1, Math.min(rows.size(), MOST_LOOKED_AT))
            .filter(at -> judge.complete(rows.get(at)))
            .toArray();
    return complete.length == 1 && titles(rows.subList(0, complete[0]), judge)
        ? complete[0]
        : likeliest(rows, judge);
  }

  private static int likeliest(List<TableRow> rows, HeaderJudge judge) {
    int best = 0;
    long most = FEWEST_LIKELY - 1;
    for (int at = 0; at < Math.min(rows.size(), MOST_LOOKED_AT); at++) {
      long likely = judge.likely(rows.get(at));
      if (likely > most) {
        best = at;
        most = likely;
      }
      if (judge.known(rows.get(at)) > 0) {
        break;
      }
    }
    return judge.complete(rows.get(best)) ? 0 : best;
  }

  private static boolean titles(List<TableRow> rows, HeaderJudge judge) {
    return rows.stream().allMatch(row -> judge.known(row) == 0);
  }
}
