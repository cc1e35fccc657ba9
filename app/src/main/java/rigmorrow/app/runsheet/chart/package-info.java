/** The day of a rig or an operator as a drawing. */
@NullMarked
package rigmorrow.app.runsheet.chart;

import org.jspecify.annotations.NullMarked;
