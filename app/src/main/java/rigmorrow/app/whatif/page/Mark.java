package rigmorrow.app.whatif.page;

/**
 * A text beside a drawing.
 *
 * @param text what it says
 * @param place where it stands, such as {@code left: 12.5%}
 */
public record Mark(String text, String place) {}
