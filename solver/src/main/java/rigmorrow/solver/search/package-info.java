/** The search: annealing over primitive queues, as a phase of OptaPlanner on its list variable. */
@NullMarked
package rigmorrow.solver.search;

import org.jspecify.annotations.NullMarked;
