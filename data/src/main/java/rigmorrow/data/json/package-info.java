/** Walks JSON and YAML trees and tells every problem with its path. */
@NullMarked
package rigmorrow.data.json;

import org.jspecify.annotations.NullMarked;
