/** The batches that peers are compared on, and where they are read from. */
@NullMarked
package rigmorrow.benchmarks.instance;

import org.jspecify.annotations.NullMarked;
