/** Answers to "why": what a plan does with a job, what else it could do, and what would help. */
@NullMarked
package rigmorrow.model.explain;

import org.jspecify.annotations.NullMarked;
