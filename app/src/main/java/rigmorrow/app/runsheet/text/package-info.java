/** What run sheets, calendars and labels call things: times, people, places, items, cautions. */
@NullMarked
package rigmorrow.app.runsheet.text;

import org.jspecify.annotations.NullMarked;
