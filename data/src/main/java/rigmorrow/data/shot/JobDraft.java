package rigmorrow.data.shot;

import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.Problems;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Hanging;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.Power;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;

/** A job as its file has it, before it is checked. A field that is not set was not given. */
public final class JobDraft {
  private final Map<JobField, Object> values = new EnumMap<>(JobField.class);
  private final Set<JobField> refused = EnumSet.noneOf(JobField.class);
  private final Map<String, String> setup = new TreeMap<>();

  /**
   * Sets a field to a value of its {@link JobField.Type}; null leaves it out. Bounds are checked
   * later.
   */
  public void set(JobField field, @Nullable Object value) {
    if (value == null) {
      values.remove(field);
      return;
    }
    Class<?> wanted = wantedClass(field.type());
    if (!wanted.isInstance(value)) {
      throw new IllegalArgumentException(field + " takes a " + wanted.getSimpleName());
    }
    values.put(field, value);
  }

  /**
   * Marks a field that is there but could not be read. The reader has told the problem; the checks
   * then neither miss the field nor judge it, and no job is built.
   */
  public void refuse(JobField field) {
    values.remove(field);
    refused.add(field);
  }

  /** Asks for a value of a setup attribute. */
  public void setSetup(String attribute, String value) {
    setup.put(attribute, value);
  }

  /** The value of a field, null when it was not given. */
  public @Nullable Object get(JobField field) {
    return values.get(field);
  }

  /** True when the field was given, readable or not. */
  boolean given(JobField field) {
    return values.containsKey(field) || refused.contains(field);
  }

  /** True when the field was given and could not be read. */
  boolean isRefused(JobField field) {
    return refused.contains(field);
  }

  /** Values asked for, by setup attribute. */
  public Map<String, String> setup() {
    return Map.copyOf(setup);
  }

  /**
   * The job, when everything about it is right.
   *
   * @param floor what its recipe and setup are looked up in
   * @param problems takes all that is wrong with the job
   * @param place where the job stands in its file
   * @return null when anything was wrong
   */
  public @Nullable ShotJob toJob(Floor floor, Problems problems, JobPlace place) {
    int before = problems.count();
    new JobChecks(this, floor, problems, place).run();
    return problems.count() > before || !refused.isEmpty() ? null : built();
  }

  /** The draft of a finished job: the opposite of {@link #toJob}. */
  public static JobDraft of(ShotJob job) {
    JobDraft draft = new JobDraft();
    draft.set(JobField.ID, job.id());
    draft.set(JobField.ARTICLE, job.article());
    draft.set(JobField.GTIN, job.gtin());
    draft.set(JobField.NAME, job.name());
    draft.set(JobField.SAMPLE, job.sample());
    draft.set(JobField.RECIPE, job.recipe());
    draft.takeItem(job.item());
    draft.set(JobField.ARRIVES_AT, job.arrivesAt());
    draft.set(JobField.LEAVES_AT, job.leavesAt());
    Promise promise = job.promise();
    if (promise != null) {
      draft.set(JobField.DUE_AT, promise.dueAt());
      draft.set(JobField.MUST, promise.must());
    }
    draft.set(JobField.WEIGHT, job.weight());
    draft.set(JobField.NOTE, job.note());
    draft.setup.putAll(job.setup().values());
    return draft;
  }

  private void takeItem(Item item) {
    set(JobField.LENGTH_MM, item.lengthMm());
    set(JobField.WIDTH_MM, item.widthMm());
    set(JobField.HEIGHT_MM, item.heightMm());
    set(JobField.MASS_KG, item.massKg());
    set(JobField.BASE_LENGTH_MM, item.baseLengthMm());
    set(JobField.BASE_WIDTH_MM, item.baseWidthMm());
    set(JobField.ROTATION_DIAMETER_MM, item.rotationDiameterMm());
    set(JobField.CENTRE_OF_MASS_HEIGHT_MM, item.centreOfMassHeightMm());
    set(JobField.OFFSET_MM, item.offsetMm());
    set(JobField.FINISH, item.finish());
    set(JobField.GLASS, item.glass());
    set(JobField.HANDS_NEEDED, item.handsNeeded());
    set(JobField.HOLDER, item.holder());
    set(JobField.HOLDER_MASS_KG, item.holderMassKg());
    Hanging hanging = item.hanging();
    if (hanging != null) {
      set(JobField.HANGING_MASS_KG, hanging.hangingMassKg());
      set(JobField.HANGING_DROP_MM, hanging.dropMm());
      set(JobField.STANDS, hanging.stands());
    }
    Power power = item.power();
    if (power != null) {
      set(JobField.VOLTS, power.volts());
      set(JobField.WATTS, power.watts());
      set(JobField.PLUG, power.plug());
    }
    set(JobField.HEIGHT_SOURCE, item.heightSource());
    set(JobField.ESTIMATED, item.estimated());
  }

  private ShotJob built() {
    String id = text(JobField.ID, "");
    String article = text(JobField.ARTICLE, id);
    LocalDateTime dueAt = (LocalDateTime) get(JobField.DUE_AT);
    return new ShotJob(
        id,
        article,
        (String) get(JobField.GTIN),
        text(JobField.NAME, article),
        text(JobField.SAMPLE, id),
        text(JobField.RECIPE, ""),
        builtItem(),
        new Setup(setup),
        (LocalDateTime) get(JobField.ARRIVES_AT),
        (LocalDateTime) get(JobField.LEAVES_AT),
        dueAt == null ? null : new Promise(dueAt, flag(JobField.MUST)),
        whole(JobField.WEIGHT),
        (String) get(JobField.NOTE));
  }

  private Item builtItem() {
    Double holderMassKg = (Double) get(JobField.HOLDER_MASS_KG);
    return new Item(
        (Integer) get(JobField.LENGTH_MM),
        (Integer) get(JobField.WIDTH_MM),
        (Integer) get(JobField.HEIGHT_MM),
        (Double) get(JobField.MASS_KG),
        (Integer) get(JobField.BASE_LENGTH_MM),
        (Integer) get(JobField.BASE_WIDTH_MM),
        (Integer) get(JobField.ROTATION_DIAMETER_MM),
        (Integer) get(JobField.CENTRE_OF_MASS_HEIGHT_MM),
        (Integer) get(JobField.OFFSET_MM),
        (String) get(JobField.FINISH),
        flag(JobField.GLASS),
        whole(JobField.HANDS_NEEDED),
        flag(JobField.HOLDER),
        holderMassKg == null ? JobField.HOLDER_MASS_KG.standard() : holderMassKg,
        builtHanging(),
        builtPower(),
        heightSource(),
        flag(JobField.ESTIMATED));
  }

  private @Nullable Hanging builtHanging() {
    Double massKg = (Double) get(JobField.HANGING_MASS_KG);
    Integer dropMm = (Integer) get(JobField.HANGING_DROP_MM);
    return massKg == null || dropMm == null
        ? null
        : new Hanging(massKg, dropMm, flag(JobField.STANDS));
  }

  private @Nullable Power builtPower() {
    Integer volts = (Integer) get(JobField.VOLTS);
    Integer watts = (Integer) get(JobField.WATTS);
    return volts == null || watts == null ? null : new Power(volts, watts, text(JobField.PLUG, ""));
  }

  /** A height that the list gives comes from the list, any other is measured by hand. */
  private HeightSource heightSource() {
    HeightSource given = (HeightSource) get(JobField.HEIGHT_SOURCE);
    if (given != null) {
      return given;
    }
    return get(JobField.HEIGHT_MM) == null ? HeightSource.HAND : HeightSource.LIST;
  }

  private String text(JobField field, String otherwise) {
    String given = (String) get(field);
    return given == null ? otherwise : given;
  }

  private int whole(JobField field) {
    Integer given = (Integer) get(field);
    return given == null ? (int) field.standard() : given;
  }

  private boolean flag(JobField field) {
    return Boolean.TRUE.equals(get(field));
  }

  private static Class<?> wantedClass(JobField.Type type) {
    return switch (type) {
      case TEXT -> String.class;
      case WHOLE -> Integer.class;
      case NUMBER -> Double.class;
      case FLAG -> Boolean.class;
      case TIME -> LocalDateTime.class;
      case HEIGHT_SOURCE -> HeightSource.class;
    };
  }
}
