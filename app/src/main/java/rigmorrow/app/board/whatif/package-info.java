/** Compares scenarios over past days for the board's manager: one comparison at a time. */
@NullMarked
package rigmorrow.app.board.whatif;

import org.jspecify.annotations.NullMarked;
