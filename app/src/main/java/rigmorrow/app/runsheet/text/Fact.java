package rigmorrow.app.runsheet.text;

/**
 * A figure with its name.
 *
 * @param label what it is
 * @param value how much or which
 */
public record Fact(String label, String value) {}
