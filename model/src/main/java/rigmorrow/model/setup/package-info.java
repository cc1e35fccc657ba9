/** Setups of rigs and what it takes to change them. */
@NullMarked
package rigmorrow.model.setup;

import org.jspecify.annotations.NullMarked;
