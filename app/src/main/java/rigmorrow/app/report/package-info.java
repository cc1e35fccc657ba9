/** Plans, fit checks and times as text for a terminal and as JSON documents. */
@NullMarked
package rigmorrow.app.report;

import org.jspecify.annotations.NullMarked;
