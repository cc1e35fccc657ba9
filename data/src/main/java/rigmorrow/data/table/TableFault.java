package rigmorrow.data.table;

/**
 * Why a row or a cell cannot be read for sure.
 *
 * @param value what stands there
 * @param accepted what would be accepted
 */
public record TableFault(String value, String accepted) {}
