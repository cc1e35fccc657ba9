/** What a planner does to a plan by hand: what comes of it, in words, and why it is refused. */
@NullMarked
package rigmorrow.app.board.touch;

import org.jspecify.annotations.NullMarked;
