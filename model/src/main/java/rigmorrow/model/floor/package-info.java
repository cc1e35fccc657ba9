/** The floor: everything that stays from day to day. */
@NullMarked
package rigmorrow.model.floor;

import org.jspecify.annotations.NullMarked;
