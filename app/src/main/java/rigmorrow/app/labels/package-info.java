/** Labels for samples: article number, name, jobs and a bar code. */
@NullMarked
package rigmorrow.app.labels;

import org.jspecify.annotations.NullMarked;
