/** Plans in JSON, and as a table for spreadsheets. */
@NullMarked
package rigmorrow.data.plan;

import org.jspecify.annotations.NullMarked;
