/** How sure a mean of few days is. */
@NullMarked
package rigmorrow.model.statistic;

import org.jspecify.annotations.NullMarked;
