package rigmorrow.app.board.intake;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.table.TableOptions;

/**
 * What a file does not say by itself.
 *
 * @param date first day to plan; null for what the file says, or the usual day
 * @param days how many, 1 to 31; null for what the file says, or the usual number
 * @param table how a table is to be read
 */
public record IntakeOptions(@Nullable LocalDate date, @Nullable Integer days, TableOptions table) {
  /** Leaves everything to the file. */
  public static final IntakeOptions NONE = new IntakeOptions(null, null, TableOptions.FIND);

  private static final int MOST_DAYS = 31;

  public IntakeOptions {
    table = table.givenOnPage();
    if (days != null && (days < 1 || days > MOST_DAYS)) {
      throw new IllegalArgumentException("days is " + days + "; accepted: 1 to " + MOST_DAYS + ".");
    }
  }

  /**
   * From what the page sends; null and empty mean that nothing is said.
   *
   * @param date YYYY-MM-DD
   * @param days a whole number
   * @param delimiter the sign or its name
   * @param decimal the sign or its name
   * @throws IllegalArgumentException with what would be accepted
   */
  public static IntakeOptions of(
      @Nullable String date,
      @Nullable String days,
      @Nullable String delimiter,
      @Nullable String decimal,
      @Nullable String sheet) {
    TableOptions table =
        TableOptions.FIND
            .withDelimiter(sign(said(delimiter), TableOptions::delimiter))
            .withDecimalMark(sign(said(decimal), TableOptions::decimalMark))
            .withSheet(said(sheet));
    return new IntakeOptions(date(said(date)), number(said(days)), table);
  }

  private static @Nullable String said(@Nullable String text) {
    return text == null || text.isEmpty() ? null : text;
  }

  private static @Nullable Character sign(
      @Nullable String word, Function<String, Character> meaning) {
    return word == null ? null : meaning.apply(word);
  }

  private static @Nullable LocalDate date(@Nullable String text) {
    try {
      return text == null ? null : LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException("'" + text + "' is no date; accepted: YYYY-MM-DD.", e);
    }
  }

  private static @Nullable Integer number(@Nullable String text) {
    if (text == null) {
      return null;
    }
    if (!text.matches("[0-9]{1,4}")) {
      throw new IllegalArgumentException("days is '" + text + "'; accepted: 1 to 31.");
    }
    return Integer.valueOf(text);
  }
}
