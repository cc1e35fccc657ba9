package rigmorrow.data.shot;

import java.util.Arrays;
import java.util.Optional;
import rigmorrow.data.json.Range;

/**
 * What a shot list says of a job: one constant for each field, in the order they are written. Only
 * the setup is not here; it has a value for each setup attribute.
 */
public enum JobField {
  ID("id", Type.TEXT),
  ARTICLE("article", Type.TEXT),
  GTIN("gtin", Type.TEXT),
  NAME("name", Type.TEXT),
  SAMPLE("sample", Type.TEXT),
  RECIPE("recipe", Type.TEXT),
  LENGTH_MM("lengthMm", Type.WHOLE, Range.of(1, JobField.LONGEST_MM)),
  WIDTH_MM("widthMm", Type.WHOLE, Range.of(1, JobField.LONGEST_MM)),
  HEIGHT_MM("heightMm", Type.WHOLE, Range.of(1, JobField.LONGEST_MM)),
  MASS_KG("massKg", Type.NUMBER, Range.above(0, JobField.HEAVIEST_KG)),
  BASE_LENGTH_MM("baseLengthMm", Type.WHOLE, Range.of(1, JobField.LONGEST_MM)),
  BASE_WIDTH_MM("baseWidthMm", Type.WHOLE, Range.of(1, JobField.LONGEST_MM)),
  ROTATION_DIAMETER_MM("rotationDiameterMm", Type.WHOLE, Range.of(1, JobField.LONGEST_MM)),
  CENTRE_OF_MASS_HEIGHT_MM("centreOfMassHeightMm", Type.WHOLE, Range.of(1, JobField.LONGEST_MM)),
  OFFSET_MM("offsetMm", Type.WHOLE, Range.of(0, JobField.LONGEST_MM)),
  FINISH("finish", Type.TEXT),
  GLASS("glass", Type.FLAG),
  HANDS_NEEDED("handsNeeded", Type.WHOLE, Range.of(1, 3)),
  HOLDER("holder", Type.FLAG),
  HOLDER_MASS_KG("holderMassKg", Type.NUMBER, Range.of(0, JobField.HEAVIEST_KG)),
  HANGING_MASS_KG("hangingMassKg", Type.NUMBER, Range.above(0, JobField.HEAVIEST_KG)),
  HANGING_DROP_MM("hangingDropMm", Type.WHOLE, Range.of(1, JobField.LONGEST_MM)),
  STANDS("stands", Type.FLAG),
  VOLTS("volts", Type.WHOLE, Range.of(1, 1_000)),
  WATTS("watts", Type.WHOLE, Range.of(1, 100_000)),
  PLUG("plug", Type.TEXT),
  HEIGHT_SOURCE("heightSource", Type.HEIGHT_SOURCE),
  ESTIMATED("estimated", Type.FLAG),
  ARRIVES_AT("arrivesAt", Type.TIME),
  LEAVES_AT("leavesAt", Type.TIME),
  DUE_AT("dueAt", Type.TIME),
  MUST("must", Type.FLAG),
  WEIGHT("weight", Type.WHOLE, Range.of(1, 1_000)),
  NOTE("note", Type.TEXT);

  /** A hundred metres: a larger figure is a slip in the unit. */
  private static final int LONGEST_MM = 100_000;

  /** Ten tonnes: a larger figure is a slip in the unit. */
  private static final double HEAVIEST_KG = 10_000;

  /** What kind of value a field takes. */
  public enum Type {
    /** A {@link String} that is not blank. */
    TEXT,
    /** An {@link Integer} within bounds. */
    WHOLE,
    /** A {@link Double} within bounds. */
    NUMBER,
    /** A {@link Boolean}. */
    FLAG,
    /** A {@link java.time.LocalDateTime} in the floor's zone. */
    TIME,
    /** A {@link rigmorrow.model.shot.HeightSource}. */
    HEIGHT_SOURCE
  }

  private final String key;
  private final Type type;
  private final Range range;

  JobField(String key, Type type) {
    this(key, type, Range.of(0, 0));
  }

  JobField(String key, Type type, Range range) {
    this.key = key;
    this.type = type;
    this.range = range;
  }

  /** The field's name in shot list JSON. */
  public String key() {
    return key;
  }

  /** What kind of value it takes. */
  public Type type() {
    return type;
  }

  /** The field of that JSON name, if there is one. */
  public static Optional<JobField> of(String key) {
    return Arrays.stream(values()).filter(field -> field.key.equals(key)).findFirst();
  }

  /** Bounds of the figure, for the types that are figures. */
  public Range range() {
    return range;
  }

  /** What the field accepts, as a phrase for the user. */
  public String accepted() {
    return switch (type) {
      case TEXT -> "a text that is not empty";
      case WHOLE -> range.phrase("a whole number");
      case NUMBER -> range.phrase("a number");
      case FLAG -> "true or false";
      case TIME -> "a date and time such as 2026-11-26T09:00";
      case HEIGHT_SOURCE -> "list, device or hand";
    };
  }
}
