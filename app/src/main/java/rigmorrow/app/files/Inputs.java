package rigmorrow.app.files;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.terminal.Session;
import rigmorrow.data.Formats;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.shottable.ShotTableOptions;
import rigmorrow.data.shottable.ShotTableReading;
import rigmorrow.data.table.TableOptions;
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
   * Reads floor and shot list. What a CSV file does not say by itself, how it was understood, is
   * told on standard error.
   *
   * @param planned a plan of the same batch, whose days a CSV file is read for; null for none
   */
  public Batch batch(ShotListSource source, @Nullable Plan planned)
      throws IOException, InputException {
    Floor floor = Formats.readFloor(session.folder().resolve(source.floor()));
    Path file = session.folder().resolve(source.shotList());
    if (Formats.isTable(file)) {
      return new Batch(floor, csv(file, floor, source, planned));
    }
    ShotList read = Formats.readShotList(file, floor);
    LocalDate date = source.date() == null ? read.date() : source.date();
    int days = source.days() == null ? read.days() : source.days();
    return new Batch(floor, new ShotList(date, days, read.jobs(), read.pins()));
  }

  /** Reads a plan and what it was made of. */
  public PlannedBatch planned(ShotListSource source, Path planFile)
      throws IOException, InputException {
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

  private ShotList csv(Path file, Floor floor, ShotListSource source, @Nullable Plan planned)
      throws IOException, InputException {
    LocalDate usual =
        planned == null
            ? LocalDate.now(session.clock().withZone(floor.zone())).plusDays(1)
            : planned.date();
    int usualDays = planned == null ? 1 : planned.days();
    ShotTableOptions options =
        new ShotTableOptions(
            source.date() == null ? usual : source.date(),
            source.days() == null ? usualDays : source.days(),
            TableOptions.FIND.withDecimalMark(source.decimal()).withDelimiter(source.delimiter()));
    ShotTableReading reading = Formats.readShotTable(file, floor, options);
    String name = String.valueOf(file.getFileName());
    reading.notes().lines().forEach(line -> session.note(name + ": " + line));
    return reading.shotList();
  }
}
