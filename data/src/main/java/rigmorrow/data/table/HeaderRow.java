package rigmorrow.data.table;

import java.util.List;
import java.util.stream.IntStream;

/** Finds the header where titles stand above it. */
public final class HeaderRow {
  /** As many rows that are not blank are looked at; a title takes a few. */
  public static final int MOST_LOOKED_AT = 10;

  private HeaderRow() {}

  /**
   * Which of the rows is the header: the first one, unless it lacks a header that is needed and
   * exactly one of those below it has them all, and all above that one are titles: a row with any
   * header that is known is a header with a slip in it, and what is below it are its jobs.
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
    return complete.length == 1 && titles(rows.subList(0, complete[0]), judge) ? complete[0] : 0;
  }

  private static boolean titles(List<TableRow> rows, HeaderJudge judge) {
    return rows.stream().allMatch(row -> judge.known(row) == 0);
  }
}
