/** Scenarios that are chosen and changed on the board, before anything is compared. */
@NullMarked
package rigmorrow.app.board.scenario;

import org.jspecify.annotations.NullMarked;
