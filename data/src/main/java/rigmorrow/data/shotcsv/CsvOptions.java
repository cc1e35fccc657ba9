package rigmorrow.data.shotcsv;

import java.nio.charset.Charset;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What a CSV file does not say by itself.
 *
 * @param date first day that may be planned; a time of day without a date is on this day
 * @param days how many days may be planned, 1 to 31
 * @param delimiter comma, semicolon or tab; null to find it in the header
 * @param decimalMark comma or point; null to find it in the numbers
 * @param charset of the text; null to find it (UTF-8, UTF-16 by its mark, else Windows-1252)
 */
public record CsvOptions(
    LocalDate date,
    int days,
    @Nullable Character delimiter,
    @Nullable Character decimalMark,
    @Nullable Charset charset) {
  static final String DELIMITERS = ",;\t";
  static final String DECIMAL_MARKS = ",.";

  public CsvOptions {
    if (days < 1 || days > 31) {
      throw new IllegalArgumentException("days is " + days + "; accepted: 1 to 31");
    }
    if (delimiter != null && DELIMITERS.indexOf(delimiter) < 0) {
      throw new IllegalArgumentException(
          "delimiter is '" + delimiter + "'; accepted: comma, semicolon or tab");
    }
    if (decimalMark != null && DECIMAL_MARKS.indexOf(decimalMark) < 0) {
      throw new IllegalArgumentException(
          "decimalMark is '" + decimalMark + "'; accepted: comma or point");
    }
  }

  /** Options that leave everything to be found in the file. */
  public static CsvOptions of(LocalDate date, int days) {
    return new CsvOptions(date, days, null, null, null);
  }

  /** These options with a given delimiter. */
  public CsvOptions withDelimiter(@Nullable Character given) {
    return new CsvOptions(date, days, given, decimalMark, charset);
  }

  /** These options with a given decimal mark. */
  public CsvOptions withDecimalMark(@Nullable Character given) {
    return new CsvOptions(date, days, delimiter, given, charset);
  }

  /** These options with a given character set. */
  public CsvOptions withCharset(@Nullable Charset given) {
    return new CsvOptions(date, days, delimiter, decimalMark, given);
  }
}
