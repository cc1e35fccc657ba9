/** Shot lists in JSON. */
@NullMarked
package rigmorrow.data.shotjson;

import org.jspecify.annotations.NullMarked;
