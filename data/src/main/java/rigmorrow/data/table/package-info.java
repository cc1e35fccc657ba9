/**
 * Tables as such, whatever file they came from: rows and cells with their place, and nothing about
 * what a column means.
 */
@NullMarked
package rigmorrow.data.table;

import org.jspecify.annotations.NullMarked;
