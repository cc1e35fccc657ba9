package rigmorrow.model.plan;

/**
 * How a plan was made, so that it can be made again.
 *
 * @param method "dispatch", "search" or "hand": changed by hand since
 * @param seed of the search
 * @param solvers how many searches ran side by side
 * @param stepLimit steps each was allowed, 0 when the clock stopped it
 * @param stopped what ended it: "time", "steps" or "interrupted"; "done" where there was none
 */
public record PlanOrigin(String method, long seed, int solvers, long stepLimit, String stopped) {}
