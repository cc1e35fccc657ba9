/** The board's interface: what a route is, what it takes and answers, and its description. */
@NullMarked
package rigmorrow.app.board.api;

import org.jspecify.annotations.NullMarked;
