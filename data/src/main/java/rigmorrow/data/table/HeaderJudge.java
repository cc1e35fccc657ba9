package rigmorrow.data.table;

/** Knows headers; tells the right delimiter from a wrong one and the right sheet from another. */
public interface HeaderJudge {
  /** How many cells of a row are headers that are known. */
  long known(TableRow header);

  /** How many cells of a row are headers that are known, or nearly: a slip or two make one. */
  long likely(TableRow header);

  /** True when the headers that are needed are among them. */
  boolean complete(TableRow header);

  /** The headers that are needed, as a phrase for the user. */
  String needed();

  /** How the options of the command line begin that say something about such a table. */
  String optionStart();

  /** What a row stands for, as a word for the user. */
  String rowWord();
}
