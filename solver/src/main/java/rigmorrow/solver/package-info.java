/** Turns a floor and a shot list into a plan. */
@NullMarked
package rigmorrow.solver;

import org.jspecify.annotations.NullMarked;
