/** Scenario files in JSON and YAML. */
@NullMarked
package rigmorrow.data.scenario;

import org.jspecify.annotations.NullMarked;
