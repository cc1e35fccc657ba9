package rigmorrow.model.explain;

/**
 * A job whose lateness another one's move changes.
 *
 * @param job id
 * @param beforeSeconds late now, 0 or more
 * @param afterSeconds late after the move, 0 or more
 */
public record LateChange(String job, int beforeSeconds, int afterSeconds) {}
