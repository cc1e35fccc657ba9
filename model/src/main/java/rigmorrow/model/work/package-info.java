/** What a job asks for on a rig. */
@NullMarked
package rigmorrow.model.work;

import org.jspecify.annotations.NullMarked;
