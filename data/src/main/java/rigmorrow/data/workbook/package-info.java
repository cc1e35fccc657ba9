/**
 * Reads tables from XLSX workbooks, and writes annotated copies of them.
 *
 * <p>The library that reads the cells trusts its file: an absurd cell reference or text number
 * makes it fill all memory. So a file is unpacked within bounds first, and its sheets are looked
 * through before the library sees them.
 */
@NullMarked
package rigmorrow.data.workbook;

import org.jspecify.annotations.NullMarked;
