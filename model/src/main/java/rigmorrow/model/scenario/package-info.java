/** What a manager asks: a floor or a demand with named changes, and what each would cost. */
@NullMarked
package rigmorrow.model.scenario;

import org.jspecify.annotations.NullMarked;
