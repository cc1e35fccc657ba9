package rigmorrow.app.board.api;

import java.util.List;
import rigmorrow.app.board.view.ProblemView;

/** A request that is not done; carries what to answer. */
public final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int status;
  private final transient ProblemView problem;

  /**
   * @param status of HTTP, 400 or above
   */
  public Refusal(int status, ProblemView problem) {
    super(problem.message());
    this.status = status;
    this.problem = problem;
  }

  /** A refusal with nothing but a sentence. */
  public static Refusal of(int status, String message) {
    return new Refusal(status, new ProblemView(message, null, List.of(), List.of()));
  }

  /** The request is not what the interface takes. */
  public static Refusal malformed(String message) {
    return of(400, message);
  }

  /** There is nothing of that name. */
  public static Refusal unknown(String message) {
    return of(404, message);
  }

  /** Status of HTTP. */
  public int status() {
    return status;
  }

  /** The body of the answer. */
  public ProblemView problem() {
    return problem;
  }
}
