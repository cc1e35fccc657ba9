/** Sizes and masses that a dimensioning device measured, and how they get into a shot list. */
@NullMarked
package rigmorrow.data.sizes;

import org.jspecify.annotations.NullMarked;
