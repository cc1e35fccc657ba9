/** Run sheets: what each rig's and each operator's day looks like on paper. */
@NullMarked
package rigmorrow.app.runsheet;

import org.jspecify.annotations.NullMarked;
