package rigmorrow.data.sizes;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.Place;
import rigmorrow.data.shot.JobField;

/** What a device measured of one article, gathered from all its rows. */
final class MeasuredArticle {
  /**
   * One figure.
   *
   * @param value whole millimetres, or kilograms
   * @param place where it stands
   */
  record Figure(Object value, Place place) {}

  private final String article;
  private final Place place;
  private final Map<JobField, Figure> figures = new EnumMap<>(JobField.class);

  /**
   * @param article its number
   * @param place its first row
   */
  MeasuredArticle(String article, Place place) {
    this.article = article;
    this.place = place;
  }

  String article() {
    return article;
  }

  Place place() {
    return place;
  }

  /** The value of a field; null when it was not measured. */
  @Nullable Object value(JobField field) {
    Figure figure = figures.get(field);
    return figure == null ? null : figure.value();
  }

  /**
   * Takes a figure.
   *
   * @return the earlier figure of that field when it has another value; null otherwise
   */
  @Nullable Figure take(JobField field, Figure figure) {
    Figure earlier = figures.putIfAbsent(field, figure);
    return earlier == null || earlier.value().equals(figure.value()) ? null : earlier;
  }
}
