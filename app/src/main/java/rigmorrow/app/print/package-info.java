/** Pages on paper: HTML turned into PDF, the letters that can be printed, plain drawings. */
@NullMarked
package rigmorrow.app.print;

import org.jspecify.annotations.NullMarked;
