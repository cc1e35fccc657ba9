/** Shot lists that are dropped on the board's page: read, mended, checked, and planned. */
@NullMarked
package rigmorrow.app.board.intake;

import org.jspecify.annotations.NullMarked;
