package rigmorrow.model.plan;

import java.util.List;

/**
 * A job that the plan does not do.
 *
 * @param job id of the job
 * @param cause what kind of obstacle
 * @param sentences what stands in the way, with figures; at least one
 */
public record LeftOut(String job, Cause cause, List<String> sentences) {
  public LeftOut {
    sentences = List.copyOf(sentences);
  }

  /** Kinds of obstacle. */
  public enum Cause {
    /** Size or mass is not known. */
    NEEDS_MEASURING,
    /** No rig can take it. */
    NO_RIG,
    /** The planner leaves it out by hand. */
    HELD_BACK,
    /** The search found no room for it within the rules. */
    NO_ROOM
  }
}
