/** What the columns of a table mean, and how their cells are read. */
@NullMarked
package rigmorrow.data.column;

import org.jspecify.annotations.NullMarked;
