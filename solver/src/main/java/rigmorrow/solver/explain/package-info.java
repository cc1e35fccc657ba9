/** Answers "why" about a plan by decoding it again with one thing changed. */
@NullMarked
package rigmorrow.solver.explain;

import org.jspecify.annotations.NullMarked;
