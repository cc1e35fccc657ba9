package rigmorrow.data.shotjson;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.json.Cursor;
import rigmorrow.data.json.Reading;
import rigmorrow.data.json.Scalars;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.schema.FileSchema;
import rigmorrow.data.shot.JobDraft;
import rigmorrow.data.shot.JobField;
import rigmorrow.data.shot.JobList;
import rigmorrow.data.shot.JobPlace;
import rigmorrow.data.shot.PlanReach;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.ShotList;

/** Reads shot lists in JSON or YAML; FORMAT.md describes them. */
public final class ShotJsonReader {
  /** The version of the format that is read and written. */
  public static final int VERSION = 1;

  private final Floor floor;
  private final Problems problems;

  private ShotJsonReader(Floor floor, Problems problems) {
    this.floor = floor;
    this.problems = problems;
  }

  /**
   * Reads a shot list and checks it against its floor.
   *
   * @param file name for messages
   * @param text content of the file
   * @param notation how it is written
   * @throws InputException with everything that is wrong with it
   */
  public static ShotList read(String file, String text, Trees.Notation notation, Floor floor)
      throws InputException {
    return read(text, notation, floor, new Reading(new Problems(file)));
  }

  static ShotList read(String text, Trees.Notation notation, Floor floor, Reading reading)
      throws InputException {
    reading.open(text, notation, FileSchema.SHOT_LIST);
    ShotJsonReader reader = new ShotJsonReader(floor, reading.problems());
    return reading.build(reader::shotList);
  }

  private ShotList shotList(Cursor list) {
    list.get().whole("version");
    LocalDate date = list.get().date("date");
    LocalDate soundDate = list.sound("date") ? date : null;
    int days = list.get().whole("days");
    JobList jobs = new JobList(floor, problems);
    list.list("jobs", job -> take(job, jobs, soundDate));
    List<Pin> pins = new PinReader(floor, jobs.ids(), soundDate).pins(list);
    return new ShotList(date, days, jobs.jobs(), pins, heldBack(list, jobs.ids(), pins));
  }

  private static List<String> heldBack(Cursor list, Set<String> jobs, List<Pin> pins) {
    Set<String> pinned = pins.stream().map(Pin::job).collect(Collectors.toSet());
    List<String> held = new ArrayList<>();
    for (String id : list.texts("heldBack")) {
      if (!jobs.contains(id)) {
        list.refuse("heldBack", id, "a job of this list");
      } else if (pinned.contains(id)) {
        list.refuse("heldBack", id, "a job that is not pinned");
      } else {
        held.add(id);
      }
    }
    return held;
  }

  private JobDraft take(Cursor job, JobList jobs, @Nullable LocalDate date) {
    JobDraft draft = new JobDraft();
    for (JobField field : JobField.values()) {
      Object value = value(job.get(), field);
      if (value instanceof LocalDateTime time && job.sound(field.key())) {
        nearPlan(job, field.key(), time, date);
      }
      if (job.sound(field.key()) || isMissingRecipe(job, field)) {
        draft.set(field, value);
      } else {
        draft.refuse(field);
      }
    }
    Cursor setup = job.freeObject("setup");
    for (String attribute : setup.names()) {
      String value = setup.get().textOrNull(attribute);
      if (value != null) {
        draft.setSetup(attribute, value);
      }
    }
    jobs.add(draft, JobPlace.atPath(job.path()));
    return draft;
  }

  /** Whoever names no recipe is best told which recipes there are, and that the checks do. */
  private static boolean isMissingRecipe(Cursor job, JobField field) {
    return field == JobField.RECIPE && !job.has(field.key());
  }

  /** Notes a time far from the plan's date; null judges none. */
  static void nearPlan(Cursor owner, String field, LocalDateTime time, @Nullable LocalDate date) {
    if (date != null && !PlanReach.holds(time.toLocalDate(), date)) {
      owner.refuse(field, PlanReach.accepted(date));
    }
  }

  private static @Nullable Object value(Scalars job, JobField field) {
    String key = field.key();
    return switch (field.type()) {
      case TEXT -> job.textOrNull(key);
      case WHOLE -> job.wholeOrNull(key);
      case NUMBER -> job.numberOrNull(key);
      case FLAG -> job.flagOrNull(key);
      case TIME -> job.dateTimeOrNull(key);
      case HEIGHT_SOURCE -> job.constantOrNull(key, HeightSource.class);
    };
  }
}
