/** Makes a plan, shows how far it is, and tells what came of it. */
@NullMarked
package rigmorrow.app.planning;

import org.jspecify.annotations.NullMarked;
