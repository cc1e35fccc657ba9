/** Turns batches, plans and answers into what the board's page reads. */
@NullMarked
package rigmorrow.app.board.make;

import org.jspecify.annotations.NullMarked;
