package rigmorrow.data.column;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.shot.JobField;

/** The columns a table may have, each with the header we write and the others we know. */
public enum Column {
  ID(JobField.ID, Kind.TEXT, "Id", "job", "job id", "job no", "job number", "shot", "shot id"),
  ARTICLE(
      JobField.ARTICLE,
      Kind.TEXT,
      "Article",
      "article number, article no, art no, art nr, item no, item number, sku",
      "product no, product number, product id",
      "varenummer, varenr, produktnummer, produktnr",
      "artikel, artikelnummer, artikelnr, materialnummer"),
  GTIN(JobField.GTIN, Kind.TEXT, "GTIN", "ean, ean code, upc, barcode, stregkode, strichcode"),
  NAME(
      JobField.NAME,
      Kind.TEXT,
      "Name",
      "product name, item name, title, description",
      "navn, varenavn, produktnavn, betegnelse, beskrivelse",
      "bezeichnung, artikelbezeichnung, produktname, beschreibung"),
  SAMPLE(
      JobField.SAMPLE,
      Kind.TEXT,
      "Sample",
      "sample id, sample no, sample number",
      "prøve, vareprøve",
      "muster"),
  RECIPE(JobField.RECIPE, Kind.TEXT, "Recipe", "recipe id, shot recipe", "opskrift", "rezept"),
  LENGTH(
      JobField.LENGTH_MM, Kind.LENGTH, "Length", "len, l, depth", "længde, dybde", "länge, tiefe"),
  WIDTH(JobField.WIDTH_MM, Kind.LENGTH, "Width", "w", "bredde, b", "breite"),
  HEIGHT(JobField.HEIGHT_MM, Kind.LENGTH, "Height", "h", "højde", "höhe"),
  MASS(JobField.MASS_KG, Kind.MASS, "Mass", "weight, item weight", "vægt, masse", "gewicht"),
  BASE_LENGTH(
      JobField.BASE_LENGTH_MM,
      Kind.LENGTH,
      "Base length",
      "foot length",
      "fodlængde",
      "standlänge"),
  BASE_WIDTH(
      JobField.BASE_WIDTH_MM, Kind.LENGTH, "Base width", "foot width", "fodbredde", "standbreite"),
  ROTATION_DIAMETER(
      JobField.ROTATION_DIAMETER_MM,
      Kind.LENGTH,
      "Rotation diameter",
      "swept diameter, turning circle",
      "rotationsdiameter, drejediameter",
      "drehdurchmesser"),
  CENTRE_OF_MASS_HEIGHT(
      JobField.CENTRE_OF_MASS_HEIGHT_MM,
      Kind.LENGTH,
      "Centre of mass height",
      "center of mass height, centre of gravity height, center of gravity height",
      "tyngdepunktshøjde",
      "schwerpunkthöhe"),
  OFFSET(
      JobField.OFFSET_MM,
      Kind.LENGTH,
      "Offset",
      "centre offset, center offset",
      "forskydning",
      "versatz"),
  FINISH(JobField.FINISH, Kind.TEXT, "Finish", "surface", "overflade", "oberfläche"),
  GLASS(JobField.GLASS, Kind.FLAG, "Glass", "glas"),
  HANDS_NEEDED(
      JobField.HANDS_NEEDED,
      Kind.COUNT,
      "Hands needed",
      "hands, people, persons",
      "hænder, personer",
      "personen"),
  HOLDER(JobField.HOLDER, Kind.FLAG, "Holder", "holder needed", "halter, halterung"),
  HOLDER_MASS(
      JobField.HOLDER_MASS_KG,
      Kind.MASS,
      "Holder mass",
      "holder weight",
      "holdervægt",
      "haltergewicht"),
  HANGING_MASS(
      JobField.HANGING_MASS_KG,
      Kind.MASS,
      "Hanging mass",
      "hanging weight",
      "hængende vægt",
      "hängegewicht"),
  DROP(
      JobField.HANGING_DROP_MM, Kind.LENGTH, "Drop", "hanging drop", "ophængslængde", "hängelänge"),
  STANDS(JobField.STANDS, Kind.FLAG, "Stands", "står", "steht"),
  VOLTS(JobField.VOLTS, Kind.VOLTS, "Volts", "voltage", "spænding", "spannung"),
  WATTS(JobField.WATTS, Kind.WATTS, "Watts", "wattage, power", "effekt", "leistung"),
  PLUG(JobField.PLUG, Kind.TEXT, "Plug", "plug type", "stik, stiktype", "stecker, steckertyp"),
  HEIGHT_SOURCE(
      JobField.HEIGHT_SOURCE,
      Kind.HEIGHT_SOURCE,
      "Height source",
      "height from",
      "højdekilde",
      "höhenquelle"),
  ESTIMATED(
      JobField.ESTIMATED, Kind.FLAG, "Estimated", "estimate", "anslået, skønnet", "geschätzt"),
  ARRIVES(
      JobField.ARRIVES_AT,
      Kind.TIME,
      "Arrives",
      "arrives at, arrival, available from",
      "ankommer, ankomst",
      "ankunft, verfügbar ab"),
  LEAVES(
      JobField.LEAVES_AT,
      Kind.TIME,
      "Leaves",
      "leaves at, collection, collected at, pickup",
      "afhentes, afhentning",
      "abholung"),
  DUE(
      JobField.DUE_AT,
      Kind.TIME,
      "Due",
      "due at, due date, due time, deadline, promised, promised by",
      "frist, senest, forfald, lovet, leveres",
      "fällig, fällig bis, termin, zugesagt"),
  MUST(JobField.MUST, Kind.FLAG, "Must", "hard", "skal", "muss"),
  JOB_WEIGHT(
      JobField.WEIGHT, Kind.COUNT, "Job weight", "priority, importance", "prioritet", "priorität"),
  NOTE(
      JobField.NOTE,
      Kind.TEXT,
      "Note",
      "notes, remark, remarks, comment, comments",
      "bemærkning, kommentar",
      "bemerkung, notiz");

  /** What the cells of a column are. */
  public enum Kind {
    TEXT,
    FLAG,
    TIME,
    LENGTH,
    MASS,
    VOLTS,
    WATTS,
    COUNT,
    HEIGHT_SOURCE;

    /** True when the cells are numbers. */
    public boolean number() {
      return unitNeeded() || this == VOLTS || this == WATTS || this == COUNT;
    }

    /** True when a number without a unit would have to be guessed. */
    public boolean unitNeeded() {
      return this == LENGTH || this == MASS;
    }

    /** The units a cell may have, as a phrase. */
    String units() {
      return switch (this) {
        case LENGTH -> "mm, cm, m or in";
        case MASS -> "kg, g or lb";
        case VOLTS -> "V";
        case WATTS -> "W";
        default -> "none";
      };
    }
  }

  private static final Map<String, Column> BY_NAME = new HashMap<>();

  static {
    for (Column column : values()) {
      register(column.title, column);
      column.synonyms.forEach(synonym -> register(synonym, column));
    }
  }

  private final JobField field;
  private final Kind kind;
  private final String title;
  private final List<String> synonyms;

  Column(JobField field, Kind kind, String title, String... synonymLists) {
    this.field = field;
    this.kind = kind;
    this.title = title;
    this.synonyms = List.of(String.join(", ", synonymLists).split(", "));
  }

  /** The field of the job it fills. */
  public JobField field() {
    return field;
  }

  Kind kind() {
    return kind;
  }

  /** The column of a field. */
  public static Column of(JobField field) {
    for (Column column : values()) {
      if (column.field == field) {
        return column;
      }
    }
    throw new IllegalArgumentException("no column for " + field);
  }

  /** The header we write, with the unit we write. */
  public String titleWithUnit() {
    return switch (kind) {
      case LENGTH -> title + " (mm)";
      case MASS -> title + " (kg)";
      default -> title;
    };
  }

  /** The header we write, without a unit. */
  String title() {
    return title;
  }

  /** Other headers we know, without a unit. */
  List<String> synonyms() {
    return synonyms;
  }

  /** The column with this header, unit taken off; null when there is none. */
  static @Nullable Column of(String header) {
    return BY_NAME.get(key(header));
  }

  /**
   * A header as it is compared: lower case, only letters and digits, Danish and German letters as
   * they are written where a keyboard lacks them (ae, oe, aa, ue, ss).
   */
  static String key(String header) {
    return Normalizer.normalize(header, Normalizer.Form.NFC)
        .toLowerCase(Locale.ROOT)
        .replace("æ", "ae")
        .replace("ä", "ae")
        .replace("ø", "oe")
        .replace("ö", "oe")
        .replace("å", "aa")
        .replace("ü", "ue")
        .replace("ß", "ss")
        .replaceAll("[^\\p{L}\\p{Nd}]", "");
  }

  private static void register(String name, Column column) {
    Column other = BY_NAME.put(key(name), column);
    if (other != null) {
      throw new IllegalStateException(name + " stands for " + other + " and " + column);
    }
  }
}
