/** What the board's page reads: records that become JSON as they stand. */
@NullMarked
package rigmorrow.app.board.view;

import org.jspecify.annotations.NullMarked;
