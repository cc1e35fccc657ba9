/** What is known of the terminal, and text laid out for it. */
@NullMarked
package rigmorrow.app.terminal;

import org.jspecify.annotations.NullMarked;
