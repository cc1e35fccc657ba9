package rigmorrow.app.calendar;

/**
 * A calendar as a file.
 *
 * @param name of the file, safe on every file system
 * @param text content lines of RFC 5545; encode them as UTF-8
 */
public record CalendarFile(String name, String text) {}
