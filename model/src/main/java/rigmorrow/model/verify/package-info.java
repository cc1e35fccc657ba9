/** The independent checker of plans. */
@NullMarked
package rigmorrow.model.verify;

import org.jspecify.annotations.NullMarked;
