package rigmorrow.benchmarks.plain;

/**
 * A job as a value of the planning list variable.
 *
 * @param number of the job in the compiled batch
 */
public record PlainJob(int number) {}
