/** A day as a model for a general exact solver, OR-Tools CP-SAT. */
@NullMarked
package rigmorrow.benchmarks.peer.exact;

import org.jspecify.annotations.NullMarked;
