package rigmorrow.data.shot;

import java.util.Arrays;
import java.util.Optional;
import rigmorrow.data.schema.FileSchema;
import rigmorrow.data.schema.Range;
import rigmorrow.data.schema.Shape;

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
  LENGTH_MM("lengthMm", Type.WHOLE),
  WIDTH_MM("widthMm", Type.WHOLE),
  HEIGHT_MM("heightMm", Type.WHOLE),
  MASS_KG("massKg", Type.NUMBER),
  BASE_LENGTH_MM("baseLengthMm", Type.WHOLE),
  BASE_WIDTH_MM("baseWidthMm", Type.WHOLE),
  ROTATION_DIAMETER_MM("rotationDiameterMm", Type.WHOLE),
  CENTRE_OF_MASS_HEIGHT_MM("centreOfMassHeightMm", Type.WHOLE),
  OFFSET_MM("offsetMm", Type.WHOLE),
  FINISH("finish", Type.TEXT),
  GLASS("glass", Type.FLAG),
  HANDS_NEEDED("handsNeeded", Type.WHOLE),
  HOLDER("holder", Type.FLAG),
  HOLDER_MASS_KG("holderMassKg", Type.NUMBER),
  HANGING_MASS_KG("hangingMassKg", Type.NUMBER),
  HANGING_DROP_MM("hangingDropMm", Type.WHOLE),
  STANDS("stands", Type.FLAG),
  VOLTS("volts", Type.WHOLE),
  WATTS("watts", Type.WHOLE),
  PLUG("plug", Type.TEXT),
  HEIGHT_SOURCE("heightSource", Type.HEIGHT_SOURCE),
  ESTIMATED("estimated", Type.FLAG),
  ARRIVES_AT("arrivesAt", Type.TIME),
  LEAVES_AT("leavesAt", Type.TIME),
  DUE_AT("dueAt", Type.TIME),
  MUST("must", Type.FLAG),
  WEIGHT("weight", Type.WHOLE),
  NOTE("note", Type.TEXT);

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

  /** What the schema of shot lists says of jobs. */
  private static final Shape JOB = FileSchema.SHOT_LIST.shape().property("jobs").element();

  private final String key;
  private final Type type;

  JobField(String key, Type type) {
    this.key = key;
    this.type = type;
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
    return JOB.property(key).range();
  }

  /** The figure that is meant where none is given. */
  double standard() {
    return JOB.property(key).standard().doubleValue();
  }

  /** What the field accepts, as a phrase for the user. */
  public String accepted() {
    return switch (type) {
      case TEXT -> "a text that is not empty";
      case WHOLE -> range().phrase("a whole number");
      case NUMBER -> range().phrase("a number");
      case FLAG -> "true or false";
      case TIME -> "a date and time such as 2026-11-26T09:00";
      case HEIGHT_SOURCE -> "list, device or hand";
    };
  }
}
