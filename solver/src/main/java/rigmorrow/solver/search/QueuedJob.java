package rigmorrow.solver.search;

/**
 * A job as a value of the planning list variable.
 *
 * @param number of the job in the compiled batch
 */
public record QueuedJob(int number) {}
