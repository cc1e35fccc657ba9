/** OptaPlanner as it comes, with its own default search and moves. */
@NullMarked
package rigmorrow.benchmarks.plain;

import org.jspecify.annotations.NullMarked;
