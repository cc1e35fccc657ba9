/** Reads floors and shot lists from files and writes plans to them. */
@NullMarked
package rigmorrow.data;

import org.jspecify.annotations.NullMarked;
