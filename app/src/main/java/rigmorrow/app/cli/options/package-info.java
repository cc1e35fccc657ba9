/** Options that several commands share. */
@NullMarked
package rigmorrow.app.cli.options;

import org.jspecify.annotations.NullMarked;
