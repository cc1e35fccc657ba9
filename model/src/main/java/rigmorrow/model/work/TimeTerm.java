package rigmorrow.model.work;

/**
 * One line of how a time is made up.
 *
 * @param part "load", "capture" or "unload"
 * @param label what takes the time
 * @param seconds how long, not rounded
 * @param figures the figures it was computed from
 */
public record TimeTerm(String part, String label, double seconds, String figures) {}
