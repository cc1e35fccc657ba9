package rigmorrow.app.board.api;

import org.jspecify.annotations.Nullable;

/**
 * What a route answers when all is well.
 *
 * @param status 200 or 202
 * @param contentType of the body, without its parameters
 * @param record what JSON is made of; null for other bodies
 * @param meaning what it is
 */
public record Answer(
    int status, String contentType, @Nullable Class<? extends Record> record, String meaning) {
  /** JSON. */
  public static final String JSON = "application/json";

  private static final int OK = 200;
  private static final int ACCEPTED = 202;

  /** A record as JSON. */
  public static Answer of(Class<? extends Record> record, String meaning) {
    return new Answer(OK, JSON, record, meaning);
  }

  /** A record as JSON about something that has only begun. */
  public static Answer begun(Class<? extends Record> record, String meaning) {
    return new Answer(ACCEPTED, JSON, record, meaning);
  }

  /** Another kind of body. */
  public static Answer of(String contentType, String meaning) {
    return new Answer(OK, contentType, null, meaning);
  }
}
