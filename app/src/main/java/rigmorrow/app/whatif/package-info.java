/** Compares scenarios over past days and tells what came of it. */
@NullMarked
package rigmorrow.app.whatif;

import org.jspecify.annotations.NullMarked;
