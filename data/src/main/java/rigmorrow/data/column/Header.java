package rigmorrow.data.column;

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
import rigmorrow.data.problem.Place;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.problem.Words;
import rigmorrow.data.shot.JobField;
import rigmorrow.data.shot.JobPlace;
import rigmorrow.data.table.Table;
import rigmorrow.data.table.TableRow;
import rigmorrow.model.setup.SetupAttribute;

/** Which column of a table is which field. */
public final class Header {
  static final int LONGEST = 100;
  static final Pattern BRACKETS = Pattern.compile("([^\\[(]*)[\\[(]\\s*([^\\])]*?)\\s*[\\])]");
  static final Pattern UNIT_WORD = Pattern.compile("(.+?)(?:[\\s_-]+(?:in|i))?[\\s_-]+([^\\s_-]+)");
  private static final Pattern UNIT_HUMP = Pattern.compile("(.*\\p{Ll})(\\p{Lu}\\p{Ll}?)");
  private static final Pattern SETUP = Pattern.compile("(?i)setup\\s*[:.]\\s*(.+)");

  /**
   * One known column of the table.
   *
   * @param index of its cells, counted from 0
   * @param written its header as the file spells it
   * @param column what it is
   * @param unit that the header names; null when it names none
   */
  public record Known(int index, String written, Column column, @Nullable Unit unit) {
    /** The column a header means, whatever its unit; null when it is not known. */
    static @Nullable Known of(int index, String written) {
      if (written.length() > LONGEST) {
        return null;
      }
      Matcher brackets = BRACKETS.matcher(written);
      if (brackets.matches()) {
        Column column = Column.of(brackets.group(1));
        Unit unit = Unit.of(brackets.group(2));
        boolean remark = column != null && !column.kind().number();
        return column == null ? null : new Known(index, written, column, remark ? null : unit);
      }
      Column plain = Column.of(written);
      if (plain != null) {
        return new Known(index, written, plain, null);
      }
      for (Pattern pattern : List.of(UNIT_WORD, UNIT_HUMP)) {
        Matcher matcher = pattern.matcher(written);
        if (matcher.matches()) {
          Column column = Column.of(matcher.group(1));
          Unit unit = Unit.of(matcher.group(2));
          if (column != null && unit != null && column.kind().number()) {
            return new Known(index, written, column, unit);
          }
        }
      }
      return null;
    }
  }

  /**
   * One setup column of the table.
   *
   * @param index of its cells, counted from 0
   * @param written its header as the file spells it
   * @param attribute what it sets
   */
  public record SetupColumn(int index, String written, SetupAttribute attribute) {}

  private final Table table;
  private final TableKind kind;
  private final Problems problems;
  private final Map<Column, Known> columns = new EnumMap<>(Column.class);
  private final Map<String, SetupColumn> setups = new LinkedHashMap<>();
  private final Map<Integer, String> unknown = new LinkedHashMap<>();
  private final Set<Column> unread = EnumSet.noneOf(Column.class);
  private final boolean complete;

  /**
   * Reads the header of a table and notes what is wrong with it.
   *
   * @param attributes that setup columns of a shot list may ask for
   */
  public Header(Table table, TableKind kind, List<SetupAttribute> attributes, Problems problems) {
    this.table = table;
    this.kind = kind;
    this.problems = problems;
    for (int index = 0; index < table.header().cells().size(); index++) {
      String written = table.header().text(index);
      Matcher setup = SETUP.matcher(written);
      if (kind == TableKind.SHOT_LIST && written.length() <= LONGEST && setup.matches()) {
        addSetup(index, written, setup.group(1), attributes);
      } else {
        add(index, written);
      }
    }
    boolean nothingMissing = true;
    for (List<Column> any : kind.needs()) {
      if (any.stream().noneMatch(columns::containsKey)) {
        missing(any.get(0), "a column " + TableKind.names(any));
        nothingMissing = false;
      }
    }
    complete = nothingMissing;
  }

  /** What the table is about. */
  TableKind kind() {
    return kind;
  }

  /** The known columns, in field order. */
  public List<Known> columns() {
    return List.copyOf(columns.values());
  }

  /** The setup columns, in file order. */
  public List<SetupColumn> setups() {
    return List.copyOf(setups.values());
  }

  /** True for a column whose header or unit has a problem, so that its cells say nothing more. */
  public boolean unread(Column column) {
    return unread.contains(column);
  }

  /** The text of a row in a text column; empty when it has none. */
  public String text(TableRow row, Column column) {
    Known known = columns.get(column);
    return known == null ? "" : CellReader.plainText(row.text(known.index()));
  }

  /** True when the table says what every row is about. */
  public boolean complete() {
    return complete;
  }

  /** Where the fields of a row stand. */
  public JobPlace place(TableRow row) {
    return new JobPlace(
        field -> {
          int index = index(field);
          return index < 0 ? table.place(row) : table.place(row, index);
        },
        this::written);
  }

  /** Headers of the columns that were not read; one without header counts when it has cells. */
  public List<String> unknown() {
    List<String> told = new ArrayList<>();
    for (Map.Entry<Integer, String> column : unknown.entrySet()) {
      int index = column.getKey();
      if (!column.getValue().isEmpty()) {
        told.add(column.getValue());
      } else if (table.rows().stream().anyMatch(row -> !row.cell(index).isEmpty())) {
        told.add("column " + Place.letters(index + 1) + ", without header");
      }
    }
    return told;
  }

  /** One line for each column that was not read and whose header is nearly that of another. */
  public List<String> meant() {
    return MeantHeader.lines(unknown.values(), kind, columns.keySet());
  }

  /** Asks for a unit in each column of sizes or masses in which nothing has one. */
  public void askForUnits() {
    for (Known known : columns.values()) {
      if (!known.column().kind().unitNeeded() || known.unit() != null || unread(known.column())) {
        continue;
      }
      List<Amount> amounts =
          table.rows().stream()
              .map(row -> row.cell(known.index()))
              .filter(cell -> !cell.isEmpty())
              .map(Amount::of)
              .toList();
      boolean numbers = amounts.stream().anyMatch(a -> Numeral.of(a.number()) != null);
      if (numbers && amounts.stream().allMatch(amount -> amount.unit().isEmpty())) {
        note(known.index(), known.written(), known.written(), CellReader.unitAsked(known));
        unread.add(known.column());
      }
    }
  }

  /** The header, as the file spells it, of a field by its name in {@link JobField}. */
  private String written(String field) {
    SetupColumn setup = setup(field);
    if (setup != null) {
      return setup.written();
    }
    Known known = known(field);
    return known != null
        ? known.written()
        : JobField.of(field).map(Column::of).map(Column::titleWithUnit).orElse(field);
  }

  private int index(String field) {
    SetupColumn setup = setup(field);
    if (setup != null) {
      return setup.index();
    }
    Known known = known(field);
    return known == null ? -1 : known.index();
  }

  private @Nullable SetupColumn setup(String field) {
    return setups.values().stream()
        .filter(setup -> field.equals("setup." + setup.attribute().id()))
        .findFirst()
        .orElse(null);
  }

  /** The column of a field; a job without a column for its id is named by its article. */
  private @Nullable Known known(String field) {
    Column column = JobField.of(field).map(Column::of).orElse(null);
    Known known = column == null ? null : columns.get(column);
    return known == null && column == Column.ID ? columns.get(Column.ARTICLE) : known;
  }

  private void add(int index, String written) {
    Known known = Known.of(index, written);
    if (known == null || !kind.columns().contains(known.column())) {
      unknown.put(index, written);
      return;
    }
    Unit unit = known.unit();
    Column column = known.column();
    if (unit != null && unit.kind() != column.kind()) {
      note(index, written, unit.symbol(), "a unit: " + column.kind().units());
      unread.add(column);
    } else if (unit == null && column.kind().unitNeeded() && written.matches(".*[\\])]")) {
      note(index, written, written, "a unit: " + column.kind().units());
      unread.add(column);
    }
    Known earlier = columns.putIfAbsent(column, known);
    if (earlier != null) {
      twice(index, written, column.title(), earlier.written());
    }
  }

  private void addSetup(int index, String written, String name, List<SetupAttribute> attributes) {
    SetupAttribute attribute =
        Names.find(attributes, name, SetupAttribute::id, SetupAttribute::label);
    if (attribute == null) {
      List<String> ids = attributes.stream().map(SetupAttribute::id).toList();
      note(index, written, name, "a setup attribute: " + Words.choice(ids, name));
      return;
    }
    SetupColumn column = new SetupColumn(index, written, attribute);
    SetupColumn earlier = setups.putIfAbsent(attribute.id(), column);
    if (earlier != null) {
      twice(index, written, "setup:" + attribute.id(), earlier.written());
    }
  }

  private void twice(int index, String written, String title, String earlier) {
    note(index, written, written, "one column for " + title + "; '" + earlier + "' is another");
  }

  private void missing(Column column, String accepted) {
    List<String> names = new ArrayList<>(column.synonyms());
    names.add(column.title().toLowerCase(Locale.ROOT));
    String meant =
        unknown.values().stream()
            .filter(written -> Words.nearest(names, written).isPresent())
            .findFirst()
            .map(written -> " (is '" + written + "' meant?)")
            .orElse("");
    String row =
        table.above().isEmpty()
            ? ""
            : "; row " + table.header().number() + " looks most like the header";
    problems.add(table.place(table.header()), column.title(), "", accepted + meant + row);
  }

  private void note(int index, String written, String value, String accepted) {
    problems.add(table.place(table.header(), index), written, value, accepted);
  }
}
