/** What a day costs, and whether a purchase pays back. */
@NullMarked
package rigmorrow.model.money;

import org.jspecify.annotations.NullMarked;
