/** What files must look like, as JSON Schema, and how it is told when they do not. */
@NullMarked
package rigmorrow.data.schema;

import org.jspecify.annotations.NullMarked;
