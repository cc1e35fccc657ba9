/** Plans and the rules they are held against. */
@NullMarked
package rigmorrow.model.plan;

import org.jspecify.annotations.NullMarked;
