/** Makes the batch of a scenario out of a batch as it was. */
@NullMarked
package rigmorrow.model.change;

import org.jspecify.annotations.NullMarked;
