/** The floor, the shot list and the plan, and the rules that hold between them. */
@NullMarked
package rigmorrow.model;

import org.jspecify.annotations.NullMarked;
