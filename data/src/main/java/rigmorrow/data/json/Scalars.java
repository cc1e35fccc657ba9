package rigmorrow.data.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.Words;

/**
 * Reads single values of the object a cursor stands on. The schema has looked at them before: kind,
 * bounds and whether they are there. A field that is missing has the schema's default; without one
 * a method with {@code OrNull} gives null. In the place of a value that was refused something sound
 * is handed out.
 */
public final class Scalars {
  private static final LocalDateTime SOME_TIME = LocalDateTime.of(2000, 1, 1, 0, 0);

  private final Cursor cursor;

  Scalars(Cursor cursor) {
    this.cursor = cursor;
  }

  /** A text. */
  public String text(String field) {
    return text(field, cursor.shape(field).standard().asText(Cursor.NO_TEXT));
  }

  /** A text, or another when it is missing. */
  public String text(String field, String otherwise) {
    String text = textOrNull(field);
    return text == null ? otherwise : text;
  }

  /** A text, or null when it is missing. */
  public @Nullable String textOrNull(String field) {
    JsonNode value = cursor.soundValue(field);
    if (value.isMissingNode()) {
      return null;
    }
    // The schema's pattern does not know every blank there is.
    if (value.textValue().isBlank()) {
      refuse(field);
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
    return cursor.soundValue(field).asText();
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
  public int whole(String field) {
    return (int) large(field);
  }

  /** A whole number, or null when it is missing. */
  public @Nullable Integer wholeOrNull(String field) {
    return cursor.has(field) || cursor.refused(field) ? whole(field) : null;
  }

  /** A whole number that may be large. */
  public long large(String field) {
    JsonNode value = cursor.soundValue(field);
    // To the schema 850.0 is whole; we want no point, so that nobody thinks parts would be kept.
    if (value.isNumber() && !value.isIntegralNumber()) {
      refuse(field);
      return (long) cursor.shape(field).standIn();
    }
    return value.isMissingNode() ? (long) cursor.shape(field).standIn() : value.longValue();
  }

  /** A number. */
  public double number(String field) {
    JsonNode value = cursor.soundValue(field);
    return value.isMissingNode() ? cursor.shape(field).standIn() : value.doubleValue();
  }

  /** A number, or null when it is missing. */
  public @Nullable Double numberOrNull(String field) {
    return cursor.has(field) || cursor.refused(field) ? number(field) : null;
  }

  /** True or false. */
  public boolean flag(String field) {
    Boolean value = flagOrNull(field);
    return value == null ? cursor.shape(field).standard().asBoolean() : value;
  }

  /** True or false, or null when it is missing. */
  public @Nullable Boolean flagOrNull(String field) {
    JsonNode value = cursor.soundValue(field);
    return value.isMissingNode() ? null : (Boolean) value.booleanValue();
  }

  /** A constant by its name in small letters with hyphens. */
  public <E extends Enum<E>> E constant(String field, Class<E> type) {
    E constant = constantOrNull(field, type);
    return constant == null ? type.getEnumConstants()[0] : constant;
  }

  /** A constant by its name in small letters with hyphens, or null when it is missing. */
  public <E extends Enum<E>> @Nullable E constantOrNull(String field, Class<E> type) {
    JsonNode value = cursor.soundValue(field);
    String given = value.isMissingNode() ? cursor.shape(field).standard().asText() : value.asText();
    for (E constant : type.getEnumConstants()) {
      if (word(constant).equals(given)) {
        return constant;
      }
    }
    return null;
  }

  /** A constant as files name it: {@code needs-measuring}. */
  public static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** A time of day. */
  public LocalTime time(String field) {
    return parsed(field, LocalTime::parse, LocalTime.MIDNIGHT);
  }

  /** A date. */
  public LocalDate date(String field) {
    return parsed(field, LocalDate::parse, SOME_TIME.toLocalDate());
  }

  /** A date and time in the floor's zone. */
  public LocalDateTime dateTime(String field) {
    return parsed(field, LocalDateTime::parse, SOME_TIME);
  }

  /** A date and time in the floor's zone, or null when it is missing. */
  public @Nullable LocalDateTime dateTimeOrNull(String field) {
    return cursor.has(field) ? dateTime(field) : null;
  }

  /** A date and time with its offset from UTC. */
  public OffsetDateTime offsetTime(String field) {
    return parsed(field, OffsetDateTime::parse, SOME_TIME.atOffset(ZoneOffset.UTC));
  }

  /** A time zone. */
  public ZoneId zone(String field) {
    return parsed(field, ZoneId::of, ZoneOffset.UTC);
  }

  /** The schema knows how a date is written, not that June has thirty days. */
  private <T> T parsed(String field, Function<String, T> parser, T standIn) {
    JsonNode value = cursor.soundValue(field);
    if (value.isMissingNode()) {
      return standIn;
    }
    try {
      return parser.apply(value.textValue());
    } catch (DateTimeException e) {
      refuse(field);
      return standIn;
    }
  }

  private void refuse(String field) {
    cursor.refuse(field, cursor.shape(field).accepted());
  }
}
