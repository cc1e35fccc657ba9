/** Files that commands read and write. */
@NullMarked
package rigmorrow.app.files;

import org.jspecify.annotations.NullMarked;
