package rigmorrow.data.shotcsv;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.problem.Words;
import rigmorrow.data.shot.JobField;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.setup.SetupAttribute;

/** Which column of a file is which field. */
final class CsvHeader {
  private static final int LONGEST = 100;
  private static final Pattern BRACKETS =
      Pattern.compile("([^\\[(]*)[\\[(]\\s*([^\\])]*?)\\s*[\\])]");
  private static final Pattern UNIT_WORD =
      Pattern.compile("(.+?)(?:[\\s_-]+(?:in|i))?[\\s_-]+([^\\s_-]+)");
  private static final Pattern UNIT_HUMP = Pattern.compile("(.*\\p{Ll})(\\p{Lu}\\p{Ll}?)");
  private static final Pattern SETUP = Pattern.compile("(?i)setup\\s*[:.]\\s*(.+)");

  /**
   * One known column of the file.
   *
   * @param index of its cells, counted from 0
   * @param written its header as the file spells it
   * @param column what it is
   * @param unit that the header names; null when it names none
   */
  record Known(int index, String written, CsvColumn column, @Nullable CsvUnit unit) {}

  /**
   * One setup column of the file.
   *
   * @param attribute what it sets
   */
  record SetupColumn(int index, String written, SetupAttribute attribute) {}

  private final Map<CsvColumn, Known> columns = new EnumMap<>(CsvColumn.class);
  private final Map<String, SetupColumn> setups = new LinkedHashMap<>();
  private final Map<Integer, String> unknown = new LinkedHashMap<>();
  private final Set<CsvColumn> unread = EnumSet.noneOf(CsvColumn.class);
  private final String where;
  private final Problems problems;

  /** Reads a header row and notes what is wrong with it. */
  CsvHeader(CsvScanner.Row row, Floor floor, Problems problems) {
    this.where = "row " + row.number();
    this.problems = problems;
    for (int index = 0; index < row.cells().size(); index++) {
      String written = row.cells().get(index);
      Matcher setup = SETUP.matcher(written);
      if (written.length() <= LONGEST && setup.matches()) {
        addSetup(index, written, setup.group(1), floor);
      } else {
        add(index, written);
      }
    }
    if (!columns.containsKey(CsvColumn.ARTICLE) && !columns.containsKey(CsvColumn.ID)) {
      missing(CsvColumn.ARTICLE, "a column Article or Id");
    }
    if (!columns.containsKey(CsvColumn.RECIPE)) {
      missing(CsvColumn.RECIPE, "a column Recipe");
    }
  }

  /** How many headers of a row are known; tells the right delimiter from a wrong one. */
  static long knownIn(CsvScanner.Row row) {
    return row.cells().stream().filter(cell -> match(0, cell) != null).count();
  }

  /** The known columns, in field order. */
  List<Known> columns() {
    return List.copyOf(columns.values());
  }

  /** The setup columns, in file order. */
  List<SetupColumn> setups() {
    return List.copyOf(setups.values());
  }

  /** Headers by index of the columns that are not known; an empty one may stand for nothing. */
  Map<Integer, String> unknown() {
    return unknown;
  }

  /** Columns whose header or unit has a problem, so that their cells say nothing more. */
  Set<CsvColumn> unread() {
    return unread;
  }

  /** The text of a row in a text column; empty when it has none. */
  String text(CsvScanner.Row row, CsvColumn column) {
    Known known = columns.get(column);
    return known == null ? "" : CellReader.plainText(row.cell(known.index()));
  }

  /** True when the file says which article and which recipe a row is about. */
  boolean complete() {
    return columns.containsKey(CsvColumn.RECIPE)
        && (columns.containsKey(CsvColumn.ARTICLE) || columns.containsKey(CsvColumn.ID));
  }

  /** The header, as the file spells it, of a field by its name in {@link JobField}. */
  String written(String fieldKey) {
    for (SetupColumn setup : setups.values()) {
      if (fieldKey.equals("setup." + setup.attribute().id())) {
        return setup.written();
      }
    }
    CsvColumn column = JobField.of(fieldKey).map(CsvColumn::of).orElse(null);
    if (column == null) {
      return fieldKey;
    }
    Known known = columns.get(column);
    if (known == null && column == CsvColumn.ID) {
      known = columns.get(CsvColumn.ARTICLE);
    }
    return known == null ? column.titleWithUnit() : known.written();
  }

  /** Notes that a column of sizes or masses has no unit anywhere. */
  void askForUnit(Known known) {
    problems.add(where, known.written(), known.written(), CellReader.unitAsked(known));
    unread.add(known.column());
  }

  private void add(int index, String written) {
    Known known = match(index, written);
    if (known == null) {
      unknown.put(index, written);
      return;
    }
    CsvUnit unit = known.unit();
    CsvColumn column = known.column();
    if (unit != null && unit.kind() != column.kind()) {
      problems.add(where, written, unit.symbol(), "a unit: " + column.kind().units());
      unread.add(column);
    } else if (unit == null && column.kind().unitNeeded() && written.matches(".*[\\])]")) {
      problems.add(where, written, written, "a unit: " + column.kind().units());
      unread.add(column);
    }
    Known earlier = columns.putIfAbsent(column, known);
    if (earlier != null) {
      twice(written, column.title(), earlier.written());
    }
  }

  private void addSetup(int index, String written, String name, Floor floor) {
    SetupAttribute attribute =
        CsvNames.find(floor.attributes(), name, SetupAttribute::id, SetupAttribute::label);
    if (attribute == null) {
      List<String> ids = floor.attributes().stream().map(SetupAttribute::id).toList();
      problems.add(where, written, name, "a setup attribute: " + Words.choice(ids, name));
      return;
    }
    SetupColumn column = new SetupColumn(index, written, attribute);
    SetupColumn earlier = setups.putIfAbsent(attribute.id(), column);
    if (earlier != null) {
      twice(written, "setup:" + attribute.id(), earlier.written());
    }
  }

  private void twice(String written, String title, String earlier) {
    problems.add(
        where, written, written, "one column for " + title + "; '" + earlier + "' is another");
  }

  private void missing(CsvColumn column, String accepted) {
    List<String> names = new ArrayList<>(column.synonyms());
    names.add(column.title().toLowerCase(Locale.ROOT));
    String meant =
        unknown.values().stream()
            .filter(written -> Words.nearest(names, written).isPresent())
            .findFirst()
            .map(written -> " (is '" + written + "' meant?)")
            .orElse("");
    problems.add(where, column.title(), "", accepted + meant);
  }

  /** The column a header means; a unit of another kind is left for the caller to refuse. */
  private static @Nullable Known match(int index, String written) {
    if (written.length() > LONGEST) {
      return null;
    }
    Matcher brackets = BRACKETS.matcher(written);
    if (brackets.matches()) {
      CsvColumn column = CsvColumn.of(brackets.group(1));
      CsvUnit unit = CsvUnit.of(brackets.group(2));
      boolean remark = column != null && !column.kind().number();
      return column == null ? null : new Known(index, written, column, remark ? null : unit);
    }
    CsvColumn plain = CsvColumn.of(written);
    if (plain != null) {
      return new Known(index, written, plain, null);
    }
    for (Pattern pattern : List.of(UNIT_WORD, UNIT_HUMP)) {
      Matcher matcher = pattern.matcher(written);
      if (matcher.matches()) {
        CsvColumn column = CsvColumn.of(matcher.group(1));
        CsvUnit unit = CsvUnit.of(matcher.group(2));
        if (column != null && unit != null && column.kind().number()) {
          return new Known(index, written, column, unit);
        }
      }
    }
    return null;
  }
}
