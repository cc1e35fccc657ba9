package rigmorrow.data.shot;

import java.util.function.UnaryOperator;

/**
 * Where a job stands in its file, so that its problems name the place as the user sees it.
 *
 * @param where from the JSON name of a field to the place a problem names
 * @param column from the JSON name of a field to the column or field as the file names it
 */
public record JobPlace(UnaryOperator<String> where, UnaryOperator<String> column) {
  /** A job in JSON at a path such as {@code jobs[3]}. */
  public static JobPlace atPath(String path) {
    return new JobPlace(
        field -> field.isEmpty() ? path : path + "." + field, UnaryOperator.identity());
  }

  /**
   * A job in a table.
   *
   * @param row as the spreadsheet counts it, such as {@code row 17}
   * @param column from the JSON name of a field, or {@code setup.} and an attribute's id, to the
   *     heading as the file spells it
   */
  public static JobPlace inRow(String row, UnaryOperator<String> column) {
    return new JobPlace(field -> row, field -> field.isEmpty() ? "" : column.apply(field));
  }
}
