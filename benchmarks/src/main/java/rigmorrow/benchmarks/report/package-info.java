/** Tells what a run came to: text, CSV and a page with charts. */
@NullMarked
package rigmorrow.benchmarks.report;

import org.jspecify.annotations.NullMarked;
