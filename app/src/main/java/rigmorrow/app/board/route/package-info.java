/** What the board can be asked over HTTP. */
@NullMarked
package rigmorrow.app.board.route;

import org.jspecify.annotations.NullMarked;
