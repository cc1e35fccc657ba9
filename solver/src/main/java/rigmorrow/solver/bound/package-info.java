/** What no workable plan of a batch can be below, and why. */
@NullMarked
package rigmorrow.solver.bound;

import org.jspecify.annotations.NullMarked;
