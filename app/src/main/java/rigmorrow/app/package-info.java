/** The command line and everything a user sees. */
@NullMarked
package rigmorrow.app;

import org.jspecify.annotations.NullMarked;
