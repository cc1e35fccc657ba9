/** The report of a comparison as a page for browser and paper. */
@NullMarked
package rigmorrow.app.whatif.page;

import org.jspecify.annotations.NullMarked;
