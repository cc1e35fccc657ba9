/** Holds scenarios against the floor as it is, batch by batch. */
@NullMarked
package rigmorrow.model.comparison;

import org.jspecify.annotations.NullMarked;
