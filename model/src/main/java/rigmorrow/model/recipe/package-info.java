/** Recipes, handling and the figures of the capture model. */
@NullMarked
package rigmorrow.model.recipe;

import org.jspecify.annotations.NullMarked;
