package rigmorrow.app.board.server;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.ExceptionHandler;
import io.javalin.http.HttpResponseException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rigmorrow.app.board.api.Answer;
import rigmorrow.app.board.api.BoardJson;
import rigmorrow.app.board.api.Exchange;
import rigmorrow.app.board.api.Refusal;
import rigmorrow.app.board.desk.RefusedTouchException;
import rigmorrow.app.board.desk.SearchingException;
import rigmorrow.app.board.desk.StaleException;
import rigmorrow.app.board.store.StoreException;
import rigmorrow.app.board.view.ProblemView;
import rigmorrow.app.board.whatif.OtherScenariosException;
import rigmorrow.app.files.FileFailures;
import rigmorrow.app.files.RefusedException;
import rigmorrow.app.planning.CoresTakenException;
import rigmorrow.data.problem.InputException;

/** Answers everything that goes wrong in one form, and never with a trace. */
final class Failures {
  private static final Logger LOG = LoggerFactory.getLogger(Failures.class);
  private static final String FAULT =
      "A fault of the program; its window says more. The plan is as it was kept last.";

  private static final int FAULT_STATUS = 500;
  private static final int CONFLICT = 409;
  private static final int UNPROCESSABLE = 422;
  private static final int LOCKED = 423;
  private static final int UNSTORED = 507;

  private Failures() {}

  static void register(JavalinConfig config) {
    on(config, Refusal.class, (e, context) -> Exchange.answer(context, e.status(), e.problem()));
    on(
        config,
        StaleException.class,
        (e, context) ->
            Exchange.answer(
                context,
                CONFLICT,
                new ProblemView(message(e), e.revision(), e.since(), List.of())));
    on(config, CoresTakenException.class, (e, context) -> answer(context, LOCKED, message(e)));
    on(
        config,
        OtherScenariosException.class,
        (e, context) -> answer(context, CONFLICT, message(e)));
    on(config, SearchingException.class, (e, context) -> answer(context, LOCKED, message(e)));
    on(
        config,
        RefusedTouchException.class,
        (e, context) -> answer(context, UNPROCESSABLE, message(e)));
    on(config, RefusedException.class, (e, context) -> answer(context, UNPROCESSABLE, message(e)));
    on(
        config,
        InputException.class,
        (e, context) ->
            answer(
                context,
                UNPROCESSABLE,
                e.problems().stream()
                    .map(problem -> problem.line() + ".")
                    .collect(Collectors.joining(" "))));
    on(config, StoreException.class, (e, context) -> unstored(e, context, message(e) + "."));
    on(config, UncheckedIOException.class, (e, context) -> unstored(e, context, sentence(e)));
    on(config, HttpResponseException.class, Failures::ofServer);
    on(config, Exception.class, Failures::fault);
    config.router.javaLangErrorHandler(
        (response, error) -> {
          LOG.error("A fault of the program", error);
          response.setStatus(FAULT_STATUS);
          response.setContentType(Answer.JSON);
          try {
            response.getOutputStream().write(BoardJson.bytes(problem(FAULT)));
          } catch (IOException e) {
            LOG.debug("the answer could not be sent", e);
          }
        });
    config.jetty.modifyServer(server -> server.setErrorHandler(new BelowUs()));
  }

  /**
   * The server hands what an answer to a failure throws to the same answer again, without an end:
   * so none may throw, not even where the other side has gone and there is nothing to write to.
   */
  private static <E extends Exception> void on(
      JavalinConfig config, Class<E> kind, ExceptionHandler<E> answer) {
    config.routes.exception(
        kind,
        (e, context) -> {
          try {
            answer.handle(e, context);
          } catch (RuntimeException gone) {
            LOG.debug("nobody takes the answer", gone);
          }
        });
  }

  private static void ofServer(HttpResponseException e, Context context) {
    String allowed = e.getDetails().get("availableMethods");
    if (allowed != null) {
      context.header("Allow", allowed);
    }
    String words =
        switch (e.getStatus()) {
          case 404 -> "There is nothing at this address.";
          case 405 -> "This address takes another method.";
          case 413 -> "The body is too large.";
          default -> HttpStatus.getMessage(e.getStatus()) + ".";
        };
    answer(context, e.getStatus(), words);
  }

  private static String sentence(UncheckedIOException e) {
    IOException cause = e.getCause();
    return cause == null ? message(e) + "." : FileFailures.sentence(cause);
  }

  /** The disk may be full, or somebody took the folder away: the planner can do something. */
  private static void unstored(Exception e, Context context, String message) {
    LOG.warn("{} {} could not be stored: {}", context.method(), context.path(), message);
    LOG.debug("it failed here", e);
    answer(context, UNSTORED, message);
  }

  private static void fault(Exception e, Context context) {
    LOG.error("A fault of the program at {} {}", context.method(), context.path(), e);
    answer(context, FAULT_STATUS, FAULT);
  }

  private static void answer(Context context, int status, String message) {
    Exchange.answer(context, status, problem(message));
  }

  private static ProblemView problem(String message) {
    return new ProblemView(message, null, List.of(), List.of());
  }

  private static String message(Exception e) {
    String message = e.getMessage();
    return message == null ? e.getClass().getSimpleName() : message;
  }

  /** What is refused before a request reaches us, such as one that is no HTTP. */
  private static final class BelowUs extends ErrorHandler {
    @Override
    public boolean handle(Request request, Response response, Callback callback) {
      int code = response.getStatus();
      response.getHeaders().put("Content-Type", Answer.JSON);
      response.getHeaders().put("Cache-Control", "no-store");
      response.getHeaders().put("X-Content-Type-Options", "nosniff");
      String words = HttpStatus.getMessage(code) + ".";
      response.write(true, ByteBuffer.wrap(BoardJson.bytes(problem(words))), callback);
      return true;
    }
  }
}
