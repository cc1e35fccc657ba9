package rigmorrow.model.plan;

/**
 * A rule that a plan breaks.
 *
 * @param rule which one
 * @param where job, rig, operator, kit or sample, by id
 * @param amount by how much, in seconds or pieces, above 0
 * @param sentence what is wrong, with figures
 */
public record Breach(FloorRule rule, String where, long amount, String sentence) {}
