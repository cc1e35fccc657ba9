/** The command line of the benchmarks. */
@NullMarked
package rigmorrow.benchmarks.cli;

import org.jspecify.annotations.NullMarked;
