/** Works out of a run's cells who is better, by how much, and how sure that is. */
@NullMarked
package rigmorrow.benchmarks.compare;

import org.jspecify.annotations.NullMarked;
