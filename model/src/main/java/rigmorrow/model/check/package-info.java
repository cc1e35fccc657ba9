/** Argument checks. */
@NullMarked
package rigmorrow.model.check;

import org.jspecify.annotations.NullMarked;
