/** What came of planning scenarios, kept as it is found. */
@NullMarked
package rigmorrow.data.cells;

import org.jspecify.annotations.NullMarked;
