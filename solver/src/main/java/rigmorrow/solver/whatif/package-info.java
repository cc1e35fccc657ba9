/** Plans every scenario on every batch with the same effort. */
@NullMarked
package rigmorrow.solver.whatif;

import org.jspecify.annotations.NullMarked;
