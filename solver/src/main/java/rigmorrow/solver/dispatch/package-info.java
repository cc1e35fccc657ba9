/** First plans by dispatch rules. */
@NullMarked
package rigmorrow.solver.dispatch;

import org.jspecify.annotations.NullMarked;
