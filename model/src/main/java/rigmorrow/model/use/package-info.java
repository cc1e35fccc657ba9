/** How much of their time a plan uses rigs for. */
@NullMarked
package rigmorrow.model.use;

import org.jspecify.annotations.NullMarked;
