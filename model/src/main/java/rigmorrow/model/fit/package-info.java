/** Which rig can take which job, and why not. */
@NullMarked
package rigmorrow.model.fit;

import org.jspecify.annotations.NullMarked;
