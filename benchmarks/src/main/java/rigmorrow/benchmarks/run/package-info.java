/** Runs every peer on every instance and keeps what came out. */
@NullMarked
package rigmorrow.benchmarks.run;

import org.jspecify.annotations.NullMarked;
