/** Plans as calendar files (RFC 5545), one for each rig and each operator. */
@NullMarked
package rigmorrow.app.calendar;

import org.jspecify.annotations.NullMarked;
