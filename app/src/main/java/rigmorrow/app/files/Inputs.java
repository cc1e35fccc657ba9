package rigmorrow.app.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.terminal.Session;
import rigmorrow.data.Formats;
import rigmorrow.data.column.TableNotes;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.shot.FewerPeople;
import rigmorrow.data.shot.SmallSizes;
import rigmorrow.data.shottable.ShotTableOptions;
import rigmorrow.data.shottable.ShotTableReading;
import rigmorrow.data.sizes.SizesMerging;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/** Reads what the command line names. */
public final class Inputs {
  private final Session session;

  /**
   * @param session tells the folder and the day
   */
  public Inputs(Session session) {
    this.session = session;
  }

  /**
   * Reads floor and shot list. What a table does not say by itself, how it was understood, is told
   * on standard error.
   *
   * @param planned a plan of the same batch, whose days a table is read for; null for none
   */
  public Batch batch(ShotListSource source, @Nullable Plan planned)
      throws IOException, InputException {
    BatchReading reading = read(source, planned);
    TableNotes notes = reading.notes();
    tell(source.shotList(), notes == null ? reading.remarks() : notes.lines());
    SizesMerging sizes = reading.sizes();
    ShotListSource.SizesSource from = source.sizes();
    if (sizes != null && from != null) {
      tell(from.file(), sizes.lines());
    }
    return reading.batch();
  }

  /**
   * Reads floor and shot list and tells nothing.
   *
   * @param planned a plan of the same batch, whose days a table is read for; null for none
   */
  public BatchReading read(ShotListSource source, @Nullable Plan planned)
      throws IOException, InputException {
    requireThere(files(source));
    Floor floor = Formats.readFloor(session.folder().resolve(source.floor()));
    Path file = session.folder().resolve(source.shotList());
    TableNotes notes = null;
    List<String> remarks = List.of();
    ShotList list;
    if (Formats.isTable(file)) {
      ShotTableReading table = Formats.readShotTable(file, floor, options(floor, source, planned));
      notes = table.notes();
      list = table.shotList();
    } else {
      ShotList read = Formats.readShotList(file, floor);
      remarks = new ArrayList<>(SmallSizes.linesOf(read));
      remarks.addAll(FewerPeople.linesOf(read));
      LocalDate date = source.date() == null ? read.date() : source.date();
      int days = source.days() == null ? read.days() : source.days();
      list = read.withDates(date, days);
    }
    ShotListSource.SizesSource from = source.sizes();
    SizesMerging sizes = null;
    if (from != null) {
      Path measured = session.folder().resolve(from.file());
      sizes = Formats.mergeSizes(measured, from.table(), list, floor, from.preferred());
      list = sizes.shotList();
    }
    return new BatchReading(new Batch(floor, list), notes, remarks, sizes);
  }

  /** Reads a plan and what it was made of. */
  public PlannedBatch planned(ShotListSource source, Path planFile)
      throws IOException, InputException {
    List<Path> files = new ArrayList<>(files(source));
    files.add(planFile);
    requireThere(files);
    Path file = session.folder().resolve(planFile);
    Plan plan = Formats.readPlan(file);
    return new PlannedBatch(batch(source, plan), plan, file.toString());
  }

  /**
   * The job with that id.
   *
   * @throws RefusedException when there is none
   */
  public static ShotJob job(ShotList shotList, String id) {
    return shotList.jobs().stream()
        .filter(job -> job.id().equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                RefusedException.unknown(
                    "--job", id, shotList.jobs().stream().map(ShotJob::id).toList()));
  }

  private ShotTableOptions options(Floor floor, ShotListSource source, @Nullable Plan planned) {
    LocalDate usual =
        planned == null
            ? LocalDate.now(session.clock().withZone(floor.zone())).plusDays(1)
            : planned.date();
    int usualDays = planned == null ? 1 : planned.days();
    return new ShotTableOptions(
        source.date() == null ? usual : source.date(),
        source.days() == null ? usualDays : source.days(),
        source.table());
  }

  private static List<Path> files(ShotListSource source) {
    ShotListSource.SizesSource sizes = source.sizes();
    return sizes == null
        ? List.of(source.floor(), source.shotList())
        : List.of(source.floor(), source.shotList(), sizes.file());
  }

  /** Where several are missing all are named; what is wrong with one alone its reader says. */
  private void requireThere(List<Path> files) {
    List<String> missing =
        files.stream()
            .filter(file -> Files.notExists(session.folder().resolve(file)))
            .map(Path::toString)
            .distinct()
            .toList();
    if (missing.size() > 1) {
      String accepted = "files that are there";
      throw new RefusedException(
          "%d files are not there: %s; accepted: %s"
              .formatted(missing.size(), String.join(", ", missing), accepted),
          missing.stream()
              .map(file -> new InputProblem(file, "file", "", "nothing of that name", accepted))
              .toList());
    }
  }

  private void tell(Path file, List<String> lines) {
    lines.forEach(line -> session.note(file.getFileName() + ": " + line));
  }
}
