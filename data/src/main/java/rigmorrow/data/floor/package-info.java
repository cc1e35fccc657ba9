/** Floor files in JSON and YAML. */
@NullMarked
package rigmorrow.data.floor;

import org.jspecify.annotations.NullMarked;
