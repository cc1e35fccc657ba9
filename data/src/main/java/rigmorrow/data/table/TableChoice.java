package rigmorrow.data.table;

/** What a user can say about a table, by the name it has where the user says it. */
public enum TableChoice {
  /** The decimal mark of numbers. */
  DECIMAL("decimal", "Decimal mark"),
  /** The sheet of a workbook. */
  SHEET("sheet", "Sheet");

  private final String option;
  private final String label;

  TableChoice(String option, String label) {
    this.option = option;
    this.label = label;
  }

  /**
   * What it is called for the user who gave those options.
   *
   * @param judge knows how the options of such a table begin on the command line
   * @return an option of the command line, or the label of a field on the page
   */
  public String name(HeaderJudge judge, TableOptions options) {
    return options.onPage() ? label : judge.optionStart() + option;
  }
}
