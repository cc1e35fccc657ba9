/** Orders that somebody gives, decoded: by hand at the board, or to explain a plan. */
@NullMarked
package rigmorrow.solver.hand;

import org.jspecify.annotations.NullMarked;
