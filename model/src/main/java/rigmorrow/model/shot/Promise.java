package rigmorrow.model.shot;

import java.time.LocalDateTime;

/**
 * When a job's pictures are due.
 *
 * @param dueAt floor time by which the last picture is taken
 * @param must true when being late breaks the plan, false when it only costs points
 */
public record Promise(LocalDateTime dueAt, boolean must) {}
