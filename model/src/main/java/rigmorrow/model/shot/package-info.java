/** The shot list: what must be photographed. */
@NullMarked
package rigmorrow.model.shot;

import org.jspecify.annotations.NullMarked;
