package rigmorrow.app.cli.options;

import java.nio.charset.Charset;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import rigmorrow.app.files.RefusedException;
import rigmorrow.app.files.ShotListSource;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.table.TableOptions;

/** How a shot list is to be read: what a table does not say by itself. */
public final class ReadingOptions {
  private static final int MOST_DAYS = 31;

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      description = "First day to plan. Default: what the file says; for a table tomorrow.")
  private @Nullable LocalDate date;

  @Option(
      names = "--days",
      paramLabel = "N",
      description = "Days to plan, 1 to 31. Default: what the file says; for a table 1.")
  private @Nullable Integer days;

  @Option(
      names = "--decimal",
      paramLabel = "MARK",
      converter = DecimalMark.class,
      description = "Decimal mark of a table: , or . Default: found in the numbers.")
  private @Nullable Character decimal;

  @Option(
      names = "--delimiter",
      paramLabel = "SIGN",
      converter = Delimiter.class,
      description = "Between the cells of a CSV file: , or ; or tab. Default: found in the file.")
  private @Nullable Character delimiter;

  @Option(
      names = "--charset",
      paramLabel = "NAME",
      converter = CharacterSet.class,
      description =
          "Character set of a CSV file, such as windows-1252 or ibm850; of the sizes too, where"
              + " they are given no other and are no UTF-8. Default: found in the file.")
  private @Nullable Charset charset;

  @Option(
      names = "--sheet",
      paramLabel = "NAME",
      description = "Sheet of an XLSX file. Default: the one whose header is known.")
  private @Nullable String sheet;

  @Option(
      names = "--sizes",
      paramLabel = "FILE",
      description = "Sizes from a dimensioning device, CSV or XLSX: fills in what the list lacks.")
  private @Nullable Path sizes;

  @Option(
      names = "--prefer-sizes",
      description = "Take the device's value where the list gives another.")
  private boolean preferSizes;

  @Option(
      names = "--sizes-decimal",
      paramLabel = "MARK",
      converter = DecimalMark.class,
      description = "Decimal mark of the sizes: , or . Default: found in the numbers.")
  private @Nullable Character sizesDecimal;

  @Option(
      names = "--sizes-charset",
      paramLabel = "NAME",
      converter = CharacterSet.class,
      description =
          "Character set of the sizes, where it is another than --charset. Default: UTF-8 where"
              + " they are that, else --charset, or found in the file.")
  private @Nullable Charset sizesCharset;

  @Option(
      names = "--sizes-sheet",
      paramLabel = "NAME",
      description = "Sheet of the sizes. Default: the one whose header is known.")
  private @Nullable String sizesSheet;

  /**
   * What was asked for.
   *
   * @throws RefusedException when the number of days is outside its bounds
   */
  public ShotListSource source(Path floor, Path shotList) {
    if (days != null && (days < 1 || days > MOST_DAYS)) {
      String accepted = "1 to " + MOST_DAYS;
      throw new RefusedException(
          "--days is " + days + "; accepted: " + accepted,
          List.of(new InputProblem("", "command line", "--days", "" + days, accepted)));
    }
    return new ShotListSource(floor, shotList, date, days, table(), sizesSource());
  }

  /** The first day to plan; null when it was not given. */
  @Nullable LocalDate date() {
    return date;
  }

  /** True when any but the date was given: they mean nothing without a shot list. */
  boolean givenBesidesDate() {
    return days != null || !table().equals(TableOptions.FIND) || sizesSource() != null;
  }

  private TableOptions table() {
    return TableOptions.FIND
        .withDecimalMark(decimal)
        .withDelimiter(delimiter)
        .withCharset(charset)
        .withSheet(sheet);
  }

  private ShotListSource.@Nullable SizesSource sizesSource() {
    TableOptions table =
        TableOptions.FIND
            .withDecimalMark(sizesDecimal)
            .withCharset(sizesCharset)
            .withSheet(sizesSheet);
    if (sizes == null && (preferSizes || !table.equals(TableOptions.FIND))) {
      String accepted = "--sizes FILE with it";
      throw new RefusedException(
          "an option about sizes without sizes; accepted: " + accepted,
          List.of(new InputProblem("", "command line", "--sizes", "", accepted)));
    }
    if (sizes == null) {
      return null;
    }
    TableOptions whole = sizesCharset == null ? table.withCharsetIfNotUtf8(charset) : table;
    return new ShotListSource.SizesSource(sizes, whole, preferSizes);
  }

  /** Finds a character set by its name. */
  static final class CharacterSet implements ITypeConverter<Charset> {
    private static final String ACCEPTED =
        "'; accepted: names such as utf-8, windows-1252, iso-8859-15, ibm850";

    @Override
    public Charset convert(String value) {
      Charset charset;
      try {
        charset = Charset.forName(value);
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException("no character set is called '" + value + ACCEPTED);
      }
      // A few only find out what a text is written in; a marked copy could not be written in them.
      if (!charset.canEncode()) {
        throw new TypeConversionException("nothing can be written in '" + value + ACCEPTED);
      }
      return charset;
    }
  }

  /** Reads a decimal mark. */
  static final class DecimalMark implements ITypeConverter<Character> {
    @Override
    public Character convert(String value) {
      return converted(value, TableOptions::decimalMark);
    }
  }

  /** Reads a delimiter. */
  static final class Delimiter implements ITypeConverter<Character> {
    @Override
    public Character convert(String value) {
      return converted(value, TableOptions::delimiter);
    }
  }

  private static Character converted(String value, Function<String, Character> convert) {
    try {
      return convert.apply(value);
    } catch (IllegalArgumentException e) {
      throw new TypeConversionException("" + e.getMessage());
    }
  }
}
