/** Clock and working hours. */
@NullMarked
package rigmorrow.model.time;

import org.jspecify.annotations.NullMarked;
