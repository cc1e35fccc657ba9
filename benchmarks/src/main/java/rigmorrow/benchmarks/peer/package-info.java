/** Other ways of planning a batch, for comparison with ours under equal time and cores. */
@NullMarked
package rigmorrow.benchmarks.peer;

import org.jspecify.annotations.NullMarked;
