package rigmorrow.data.column;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import rigmorrow.data.problem.Words;

/** Finds the headers that a slip of the keyboard has hidden. */
final class MeantHeader {
  /** Two slips in a word of six letters leave it known; in a shorter one they make another word. */
  private static final int MANY_LETTERS = 6;

  private static final int FEW_LETTERS = 4;

  private MeantHeader() {}

  /**
   * One line for each header that is nearly that of a column which the table lacks.
   *
   * @param unknown headers that are not known, with or without a unit
   * @param kind of the table
   * @param there columns that the table has already
   */
  static List<String> lines(Collection<String> unknown, TableKind kind, Set<Column> there) {
    List<String> lines = new ArrayList<>();
    for (String written : unknown) {
      if (written.length() <= Header.LONGEST) {
        of(withoutUnit(written), kind, there)
            .ifPresent(meant -> lines.add(written + ": did you mean " + meant + "?"));
      }
    }
    return lines;
  }

  /** True for a header that a slip or two away would be known. */
  static boolean isNearly(String written, TableKind kind) {
    return written.length() <= Header.LONGEST
        && of(withoutUnit(written), kind, Set.of()).isPresent();
  }

  /** A slip in a header that is there already, beside it, hides no other. */
  private static Optional<String> of(String given, TableKind kind, Set<Column> there) {
    String key = Column.key(given);
    Column nearest = null;
    String meant = "";
    int least = mostSlips(key) + 1;
    for (Column column : kind.columns()) {
      for (String name : names(column)) {
        String known = Column.key(name);
        boolean near = Math.abs(known.length() - key.length()) < least;
        int slips = near ? Words.slips(known, key) : least;
        if (slips < least && slips <= mostSlips(known)) {
          least = slips;
          nearest = column;
          meant = name;
        }
      }
    }
    if (nearest == null || there.contains(nearest)) {
      return Optional.empty();
    }
    boolean capital = !given.equals(given.toLowerCase(Locale.ROOT));
    return Optional.of(capital ? capitalised(meant) : meant);
  }

  private static List<String> names(Column column) {
    return Stream.concat(Stream.of(column.title()), column.synonyms().stream()).toList();
  }

  private static String withoutUnit(String written) {
    Matcher brackets = Header.BRACKETS.matcher(written);
    if (brackets.matches()) {
      return brackets.group(1).strip();
    }
    Matcher word = Header.UNIT_WORD.matcher(written);
    return word.matches() && Unit.of(word.group(2)) != null ? word.group(1) : written;
  }

  private static int mostSlips(String key) {
    return key.length() >= MANY_LETTERS ? 2 : key.length() >= FEW_LETTERS ? 1 : 0;
  }

  private static String capitalised(String name) {
    int first = name.offsetByCodePoints(0, 1);
    return name.substring(0, first).toUpperCase(Locale.ROOT) + name.substring(first);
  }
}
