package rigmorrow.data.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAccessor;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.Words;

/**
 * Reads single values of the object a cursor stands on. A method with {@code otherwise} takes a
 * field that may be missing; one with {@code OrNull} gives null then; any other notes a problem.
 * Values out of bounds or of a wrong kind are noted, and something sound is handed out.
 */
public final class Scalars {
  static final String TEXT = "a text that is not empty; put digits in quotes";

  private static final LocalDateTime SOME_TIME = LocalDateTime.of(2000, 1, 1, 0, 0);

  private final Cursor cursor;

  Scalars(Cursor cursor) {
    this.cursor = cursor;
  }

  /** A text. */
  public String text(String field) {
    String text = textOrNull(field);
    if (text == null) {
      if (!cursor.has(field)) {
        cursor.refuse(field, TEXT);
      }
      return Cursor.NO_TEXT;
    }
    return text;
  }

  /** A text, or another when it is missing. */
  public String text(String field, String otherwise) {
    String text = textOrNull(field);
    return text == null ? otherwise : text;
  }

  /** A text, or null when it is missing. */
  public @Nullable String textOrNull(String field) {
    JsonNode value = cursor.value(field);
    if (value.isMissingNode()) {
      return null;
    }
    if (!value.isTextual() || value.textValue().isBlank()) {
      cursor.refuse(field, TEXT);
      return null;
    }
    return value.textValue();
  }

  /** A text that none of the others in its list has. */
  public String unique(String field, Set<String> seen) {
    String text = text(field);
    if (!text.equals(Cursor.NO_TEXT) && !seen.add(text)) {
      cursor.refuse(field, "a text that no other has; " + text + " was there before");
    }
    return text;
  }

  /** A text that may be empty. */
  public String anyText(String field) {
    JsonNode value = cursor.value(field);
    if (!value.isTextual()) {
      cursor.refuse(field, "a text");
    }
    return value.asText();
  }

  /** One of the known words; a null set accepts any. */
  public String reference(String field, @Nullable Set<String> known, String what) {
    String word = text(field);
    if (known != null && !word.equals(Cursor.NO_TEXT) && !known.contains(word)) {
      cursor.refuse(field, what + ": " + Words.choice(known, word));
      return Cursor.NO_TEXT;
    }
    return word;
  }

  /** A whole number. */
  public int whole(String field, Range range) {
    return orStandIn(wholeOrNull(field, range), field, range, "a whole number").intValue();
  }

  /** A whole number, or another when it is missing. */
  public int whole(String field, Range range, int otherwise) {
    Integer value = wholeOrNull(field, range);
    return value == null ? otherwise : value;
  }

  /** A whole number, or null when it is missing. */
  public @Nullable Integer wholeOrNull(String field, Range range) {
    JsonNode value = cursor.value(field);
    if (value.isMissingNode()) {
      return null;
    }
    if (!value.isIntegralNumber() || !value.canConvertToInt() || !range.holds(value.intValue())) {
      cursor.refuse(field, range.phrase("a whole number"));
      return (int) range.standIn();
    }
    return value.intValue();
  }

  /** A whole number that may be large. */
  public long large(String field, long least) {
    JsonNode value = cursor.value(field);
    if (!value.isIntegralNumber() || !value.canConvertToLong() || value.longValue() < least) {
      cursor.refuse(field, "a whole number of at least " + least);
      return least;
    }
    return value.longValue();
  }

  /** A number. */
  public double number(String field, Range range) {
    return orStandIn(numberOrNull(field, range), field, range, "a number").doubleValue();
  }

  /** A number, or another when it is missing. */
  public double number(String field, Range range, double otherwise) {
    Double value = numberOrNull(field, range);
    return value == null ? otherwise : value;
  }

  /** A number, or null when it is missing. */
  public @Nullable Double numberOrNull(String field, Range range) {
    JsonNode value = cursor.value(field);
    if (value.isMissingNode()) {
      return null;
    }
    if (!value.isNumber() || !range.holds(value.doubleValue())) {
      cursor.refuse(field, range.phrase("a number"));
      return range.standIn();
    }
    return value.doubleValue();
  }

  /** True or false, or another when it is missing. */
  public boolean flag(String field, boolean otherwise) {
    Boolean value = flagOrNull(field);
    return value == null ? otherwise : value;
  }

  /** True or false, or null when it is missing. */
  public @Nullable Boolean flagOrNull(String field) {
    JsonNode value = cursor.value(field);
    if (value.isMissingNode()) {
      return null;
    }
    if (!value.isBoolean()) {
      cursor.refuse(field, "true or false");
      return false;
    }
    return value.booleanValue();
  }

  /** A constant by its name in small letters with hyphens, or another when it is missing. */
  public <E extends Enum<E>> @Nullable E constantOrNull(String field, Class<E> type) {
    JsonNode value = cursor.value(field);
    if (value.isMissingNode()) {
      return null;
    }
    for (E constant : type.getEnumConstants()) {
      if (word(constant).equals(value.textValue())) {
        return constant;
      }
    }
    List<String> words = Arrays.stream(type.getEnumConstants()).map(Scalars::word).toList();
    cursor.refuse(field, Words.choice(words, value.textValue()));
    return type.getEnumConstants()[0];
  }

  /** A constant as files name it: {@code needs-measuring}. */
  public static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** A time of day. */
  public LocalTime time(String field) {
    return parsed(field, LocalTime::parse, LocalTime.MIDNIGHT, "a time such as 07:30");
  }

  /** A date. */
  public LocalDate date(String field) {
    return parsed(
        field,
        text -> inReach(LocalDate.parse(text), text),
        SOME_TIME.toLocalDate(),
        "a date such as 2026-11-26");
  }

  /** A date and time in the floor's zone. */
  public LocalDateTime dateTime(String field) {
    return parsed(
        field,
        text -> inReach(LocalDateTime.parse(text), text),
        SOME_TIME,
        "a date and time such as 2026-11-26T09:00");
  }

  /** A date and time in the floor's zone, or null when it is missing. */
  public @Nullable LocalDateTime dateTimeOrNull(String field) {
    return cursor.has(field) ? dateTime(field) : null;
  }

  /** A date and time with its offset from UTC. */
  public OffsetDateTime offsetTime(String field) {
    return parsed(
        field,
        text -> inReach(OffsetDateTime.parse(text), text),
        SOME_TIME.atOffset(ZoneOffset.UTC),
        "a date and time with offset such as 2026-11-26T09:00:00+01:00");
  }

  /** A time zone. */
  public ZoneId zone(String field) {
    return parsed(field, ZoneId::of, ZoneOffset.UTC, "a zone such as Europe/Berlin");
  }

  /** A year far off is a slip, and seconds would not hold it. */
  private static <T extends TemporalAccessor> T inReach(T date, String text) {
    int year = date.get(ChronoField.YEAR);
    if (year < 1900 || year > 2999) {
      throw new DateTimeException(text);
    }
    return date;
  }

  private <T> T parsed(String field, Function<String, T> parser, T standIn, String accepted) {
    JsonNode value = cursor.value(field);
    if (value.isTextual()) {
      try {
        return parser.apply(value.textValue());
      } catch (DateTimeException e) {
        cursor.refuse(field, accepted);
        return standIn;
      }
    }
    cursor.refuse(field, accepted);
    return standIn;
  }

  private Number orStandIn(@Nullable Number value, String field, Range range, String kind) {
    if (value == null) {
      cursor.refuse(field, range.phrase(kind));
      return range.standIn();
    }
    return value;
  }
}
