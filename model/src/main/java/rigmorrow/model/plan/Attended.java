package rigmorrow.model.plan;

import java.util.List;
import rigmorrow.model.time.Span;

/**
 * A hands-on part of a job.
 *
 * @param span when, in seconds from the plan's origin
 * @param operators ids of those who do it, the one in charge first
 */
public record Attended(Span span, List<String> operators) {
  public Attended {
    operators = List.copyOf(operators);
  }
}
