package rigmorrow.data.problem;

/**
 * One thing that is wrong with an input file.
 *
 * @param file name of the file as the user gave it
 * @param where row as the spreadsheet counts it ("row 17"), or path in the file
 *     ("rigs[2].size.plateDiameterMm")
 * @param field column or field, as the file names it; empty when the whole row or file is meant
 * @param value what stands there, shortened when long; empty when nothing does
 * @param accepted what would be accepted, as a phrase
 */
public record InputProblem(String file, String where, String field, String value, String accepted) {
  private static final int LONGEST_VALUE = 60;

  public InputProblem {
    value = value.strip().replaceAll("\\p{Cntrl}+", " ");
    if (value.length() > LONGEST_VALUE) {
      value = value.substring(0, LONGEST_VALUE) + "…";
    }
  }

  /** The problem on one line, without the file's name. */
  public String line() {
    String place = field.isEmpty() || where.endsWith(field) ? where : where + ", " + field;
    String found = value.isEmpty() ? "nothing there" : "'" + value + "'";
    return place + ": " + found + "; accepted: " + accepted;
  }
}
