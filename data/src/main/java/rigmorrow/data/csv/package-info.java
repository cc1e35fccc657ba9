/**
 * Reads tables from the CSV files that spreadsheets write, and writes annotated copies of them.
 *
 * <p>The splitting of text into rows is our own (RFC 4180 with the liberties spreadsheets take):
 * the CSV parser of the JSON library reads ahead, so its line numbers are off when a cell spans
 * lines or a row is blank, and a problem must name the row that the spreadsheet shows.
 */
@NullMarked
package rigmorrow.data.csv;

import org.jspecify.annotations.NullMarked;
