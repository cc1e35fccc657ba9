/** Compares the solver with published values and with other methods. */
@NullMarked
package rigmorrow.benchmarks;

import org.jspecify.annotations.NullMarked;
