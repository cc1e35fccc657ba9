/** What the planner decides at the board: touches kept, undo and redo, searches and versions. */
@NullMarked
package rigmorrow.app.board.desk;

import org.jspecify.annotations.NullMarked;
