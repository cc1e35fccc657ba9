package rigmorrow.data.shot;

import java.util.function.Function;
import java.util.function.UnaryOperator;
import rigmorrow.data.problem.Place;

/**
 * Where a job stands in its file, so that its problems name the place as the user sees it. A field
 * is named by its JSON name, a setup by {@code setup.} and the attribute's id, the whole job by an
 * empty text.
 *
 * @param where from a field to the place a problem names
 * @param column from a field to the column or field as the file names it
 */
public record JobPlace(Function<String, Place> where, UnaryOperator<String> column) {
  /** A job in JSON at a path such as {@code jobs[3]}. */
  public static JobPlace atPath(String path) {
    return new JobPlace(
        field -> Place.of(field.isEmpty() ? path : path + "." + field), UnaryOperator.identity());
  }
}
