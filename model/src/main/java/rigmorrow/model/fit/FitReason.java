package rigmorrow.model.fit;

/**
 * One reason why a rig cannot take a job.
 *
 * @param rule what was asked
 * @param needed figure needed, with its unit
 * @param offered figure offered, with its unit
 * @param shortfall how far off as a share of what is needed, above 0, 1 for "not at all"
 */
public record FitReason(FitRule rule, String needed, String offered, double shortfall) {}
