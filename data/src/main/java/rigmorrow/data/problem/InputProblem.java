package rigmorrow.data.problem;

/**
 * One thing that is wrong with an input file.
 *
 * @param file name of the file as the user gave it
 * @param place row or cell as the spreadsheet counts it, or path in the file
 * @param field column or field, as the file names it; empty when the whole row or file is meant
 * @param value what stands there, shortened when long; empty when nothing does
 * @param accepted what would be accepted, as a phrase
 */
public record InputProblem(String file, Place place, String field, String value, String accepted) {
  private static final int LONGEST_VALUE = 60;

  public InputProblem {
    value = value.strip().replaceAll("\\p{Cntrl}+", " ");
    if (value.length() > LONGEST_VALUE) {
      value = value.substring(0, LONGEST_VALUE) + "…";
    }
  }

  /**
   * A problem that is in no table.
   *
   * @param where path in the file ("rigs[2].size.plateDiameterMm"), or "file" for all of it
   */
  public InputProblem(String file, String where, String field, String value, String accepted) {
    this(file, Place.of(where), field, value, accepted);
  }

  /** The place as text: a path, or "sheet 'Tomorrow', row 17, column C". */
  public String where() {
    return place.text();
  }

  /** The problem on one line, without the file's name. */
  public String line() {
    boolean pathNamesField = place.row() == 0 && where().endsWith(field);
    String at = field.isEmpty() || pathNamesField ? where() : where() + ", " + field;
    return at + ": " + found();
  }

  /** The problem on one line, to stand in the row it is about. */
  public String besideRow() {
    String at = (Place.letters(place.column()) + " " + field).strip();
    return (at.isEmpty() ? "row" : at) + ": " + found();
  }

  private String found() {
    return (value.isEmpty() ? "nothing there" : "'" + value + "'") + "; accepted: " + accepted;
  }
}
