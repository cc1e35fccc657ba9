package rigmorrow.app.board.api;

import io.javalin.http.Handler;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing that the board can be asked over HTTP. Routes are registered and described from the
 * same list, so that no route goes without a description.
 *
 * @param method of the request
 * @param path with segments in braces for path parameters
 * @param summary what it does, in a sentence
 * @param parameters besides the body
 * @param body what it takes
 * @param answers what it answers when all is well; at least one
 * @param handler does it
 */
public record Route(
    Method method,
    String path,
    String summary,
    List<Parameter> parameters,
    Body body,
    List<Answer> answers,
    Handler handler) {
  public Route {
    parameters = List.copyOf(parameters);
    answers = List.copyOf(answers);
  }

  /** What may be asked for. */
  public enum Method {
    /** Changes nothing. */
    GET,
    /** May change something. */
    POST
  }

  /**
   * The body of a request.
   *
   * @param record what JSON must be; null for none or for bytes
   * @param bytes true for a file
   */
  public record Body(@Nullable Class<? extends Record> record, boolean bytes) {
    /** No body. */
    public static final Body NONE = new Body(null, false);

    /** A file. */
    public static final Body FILE = new Body(null, true);

    /** A record as JSON. */
    public static Body of(Class<? extends Record> record) {
      return new Body(record, false);
    }
  }

  /** A question that takes nothing and answers a record. */
  public static Route get(
      String path, String summary, Class<? extends Record> answer, Handler handler) {
    return new Route(
        Method.GET,
        path,
        summary,
        List.of(),
        Body.NONE,
        List.of(Answer.of(answer, summary)),
        handler);
  }

  /** A wish that takes a record and answers one. */
  public static Route post(
      String path,
      String summary,
      Class<? extends Record> body,
      Class<? extends Record> answer,
      Handler handler) {
    return new Route(
        Method.POST,
        path,
        summary,
        List.of(),
        Body.of(body),
        List.of(Answer.of(answer, summary)),
        handler);
  }

  /** The same with parameters. */
  public Route with(Parameter... more) {
    return new Route(method, path, summary, List.of(more), body, answers, handler);
  }

  /** The same with other answers. */
  public Route answering(Answer... others) {
    return new Route(method, path, summary, parameters, body, List.of(others), handler);
  }
}
