/** Draws charts as SVG, each with a table that says the same. */
@NullMarked
package rigmorrow.benchmarks.chart;

import org.jspecify.annotations.NullMarked;
