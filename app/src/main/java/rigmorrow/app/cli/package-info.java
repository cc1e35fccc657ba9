/** The command line: one class for each command. */
@NullMarked
package rigmorrow.app.cli;

import org.jspecify.annotations.NullMarked;
