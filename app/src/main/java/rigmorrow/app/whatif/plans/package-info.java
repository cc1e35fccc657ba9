/** The plans of a comparison: how they are found again, kept and followed. */
@NullMarked
package rigmorrow.app.whatif.plans;

import org.jspecify.annotations.NullMarked;
