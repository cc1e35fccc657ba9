/** The compiled batch and the one decoder that turns sequences into times. */
@NullMarked
package rigmorrow.solver.timeline;

import org.jspecify.annotations.NullMarked;
