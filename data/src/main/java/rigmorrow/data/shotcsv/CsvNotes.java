package rigmorrow.data.shotcsv;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a CSV file was understood.
 *
 * @param charset name of the character set the text was read in
 * @param delimiter between cells
 * @param decimalMark comma or point; null when no number of the file needs one or they disagree
 * @param unknownColumns headers, as written, of columns that were not read
 * @param conversions one line for each column and unit that was converted
 * @param remarks anything else the user should see, such as numbers written in two ways
 */
public record CsvNotes(
    String charset,
    char delimiter,
    @Nullable Character decimalMark,
    List<String> unknownColumns,
    List<String> conversions,
    List<String> remarks) {
  public CsvNotes {
    unknownColumns = List.copyOf(unknownColumns);
    conversions = List.copyOf(conversions);
    remarks = List.copyOf(remarks);
  }

  /** Everything as lines to show, the most general first. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    String mark = decimalMark == null ? "not settled by the file" : name(decimalMark);
    lines.add("text " + charset + ", delimiter " + name(delimiter) + ", decimal mark " + mark);
    lines.addAll(conversions);
    for (String column : unknownColumns) {
      lines.add("column '" + column + "' is not known and was not read");
    }
    lines.addAll(remarks);
    return lines;
  }

  static String name(char sign) {
    return switch (sign) {
      case ',' -> "comma";
      case ';' -> "semicolon";
      case '\t' -> "tab";
      case '.' -> "point";
      default -> "'" + sign + "'";
    };
  }
}
