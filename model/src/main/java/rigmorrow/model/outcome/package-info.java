/** What came of planning a batch of a scenario. */
@NullMarked
package rigmorrow.model.outcome;

import org.jspecify.annotations.NullMarked;
