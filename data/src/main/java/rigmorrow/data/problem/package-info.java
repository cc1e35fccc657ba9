/** What can be wrong with an input file, and how it is told. */
@NullMarked
package rigmorrow.data.problem;

import org.jspecify.annotations.NullMarked;
