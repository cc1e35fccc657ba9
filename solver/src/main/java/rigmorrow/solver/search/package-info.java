/** The search: OptaPlanner's list variable, own moves, annealing. */
@NullMarked
package rigmorrow.solver.search;

import org.jspecify.annotations.NullMarked;
