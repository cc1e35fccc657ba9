/** Explanations as sentences, text and JSON. */
@NullMarked
package rigmorrow.app.explain;

import org.jspecify.annotations.NullMarked;
