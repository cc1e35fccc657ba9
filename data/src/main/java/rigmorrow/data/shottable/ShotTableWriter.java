package rigmorrow.data.shottable;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.column.Column;
import rigmorrow.data.column.Numeral;
import rigmorrow.data.shot.JobDraft;
import rigmorrow.data.shot.JobField;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.ShotList;

/** Writes a shot list as CSV, with the headers and units of {@link Column}. */
public final class ShotTableWriter {
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  /** Always written, so that the file says what a job is even where it could be left out. */
  private static final Set<Column> ALWAYS =
      EnumSet.of(
          Column.ID,
          Column.ARTICLE,
          Column.NAME,
          Column.SAMPLE,
          Column.RECIPE,
          Column.HEIGHT_SOURCE);

  /** A column in which every job has this, or nothing, is left out. */
  private static final Map<JobField, Object> DEFAULTS =
      new EnumMap<>(
          Map.of(
              JobField.GLASS, false,
              JobField.HANDS_NEEDED, 1,
              JobField.HOLDER, false,
              JobField.HOLDER_MASS_KG, 0.0,
              JobField.STANDS, false,
              JobField.ESTIMATED, false,
              JobField.MUST, false,
              JobField.WEIGHT, 1));

  private ShotTableWriter() {}

  /**
   * A shot list as UTF-8 CSV with byte order mark, comma and decimal point. Reading it back with
   * the list's date and days gives an equal list; blanks around a text are lost.
   *
   * @throws IllegalArgumentException when the list has pins or jobs held back, which a table cannot
   *     keep
   */
  public static byte[] write(ShotList shotList) {
    if (!shotList.pins().isEmpty()) {
      throw new IllegalArgumentException(
          "the shot list has " + shotList.pins().size() + " pins; accepted: none in a CSV file");
    }
    if (!shotList.heldBack().isEmpty()) {
      throw new IllegalArgumentException(
          "the shot list holds back "
              + shotList.heldBack().size()
              + " jobs; accepted: none in a CSV file");
    }
    List<JobDraft> drafts = shotList.jobs().stream().map(JobDraft::of).toList();
    Set<Column> columns = columns(drafts);
    Set<String> attributes = new TreeSet<>();
    drafts.forEach(draft -> attributes.addAll(draft.setup().keySet()));

    StringBuilder text = new StringBuilder().append(BYTE_ORDER_MARK);
    List<String> header = new ArrayList<>();
    columns.forEach(column -> header.add(column.titleWithUnit()));
    attributes.forEach(attribute -> header.add("setup:" + attribute));
    append(text, header);
    for (JobDraft draft : drafts) {
      List<String> cells = new ArrayList<>();
      columns.forEach(column -> cells.add(cell(draft.get(column.field()))));
      attributes.forEach(attribute -> cells.add(cell(draft.setup().get(attribute))));
      append(text, cells);
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static Set<Column> columns(List<JobDraft> drafts) {
    Set<Column> columns = EnumSet.copyOf(ALWAYS);
    for (Column column : Column.values()) {
      for (JobDraft draft : drafts) {
        Object value = draft.get(column.field());
        if (value != null && !value.equals(DEFAULTS.get(column.field()))) {
          columns.add(column);
        }
      }
    }
    return columns;
  }

  private static String cell(@Nullable Object value) {
    if (value == null) {
      return "";
    }
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    if (value instanceof HeightSource source) {
      return source.name().toLowerCase(Locale.ROOT);
    }
    if (value instanceof Double number) {
      String plain = BigDecimal.valueOf(number).toPlainString();
      Numeral numeral = Numeral.of(plain);
      return numeral != null && numeral.ambiguous() ? plain + "0" : plain;
    }
    return value.toString();
  }

  private static void append(StringBuilder text, List<String> cells) {
    for (int i = 0; i < cells.size(); i++) {
      text.append(i == 0 ? "" : ",").append(quotedIfNeeded(cells.get(i)));
    }
    text.append("\r\n");
  }

  private static String quotedIfNeeded(String cell) {
    boolean needed = cell.chars().anyMatch(sign -> ",;\t\"\r\n".indexOf(sign) >= 0);
    return needed ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
  }
}
