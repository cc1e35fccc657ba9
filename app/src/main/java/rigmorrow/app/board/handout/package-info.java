/** What the board hands out: sheets, tables, calendars, labels, a chart. */
@NullMarked
package rigmorrow.app.board.handout;

import org.jspecify.annotations.NullMarked;
