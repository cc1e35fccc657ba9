/** Keeps every state of a board in one file, so that nothing that was kept is ever lost. */
@NullMarked
package rigmorrow.app.board.store;

import org.jspecify.annotations.NullMarked;
