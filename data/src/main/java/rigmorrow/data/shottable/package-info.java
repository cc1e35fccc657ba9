/** Shot lists in tables: rows to jobs, and back. */
@NullMarked
package rigmorrow.data.shottable;

import org.jspecify.annotations.NullMarked;
