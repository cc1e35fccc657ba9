/** Problems of the scheduling literature as ordinary floor files and shot lists. */
@NullMarked
package rigmorrow.benchmarks.textbook;

import org.jspecify.annotations.NullMarked;
