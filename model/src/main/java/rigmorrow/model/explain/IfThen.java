package rigmorrow.model.explain;

/**
 * What one change would do to a job, decoded.
 *
 * @param change what is supposed
 * @param helps for a planned job: its pictures are taken sooner; for one that is left out: it is
 *     planned and no hard rule is broken that is kept without it
 * @param times of the job then; for one that is left out, at the best place
 * @param cost of the whole plan then
 */
public record IfThen(Change change, boolean helps, JobTimes times, Cost cost) {}
