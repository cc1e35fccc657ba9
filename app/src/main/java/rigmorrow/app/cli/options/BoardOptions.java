package rigmorrow.app.cli.options;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rigmorrow.app.board.desk.Desk;
import rigmorrow.app.board.store.Aside;
import rigmorrow.app.board.store.BoardStore;
import rigmorrow.app.board.whatif.DaySource;
import rigmorrow.app.files.Inputs;
import rigmorrow.app.files.PlannedBatch;
import rigmorrow.app.files.RefusedException;
import rigmorrow.app.files.ShotListSource;
import rigmorrow.app.planning.Planning;
import rigmorrow.app.terminal.Session;
import rigmorrow.data.demo.Demo;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;

/** Which board to open, and what to begin it with. */
public final class BoardOptions {
  private static final int DEMO_JOBS = 150;
  private static final String FOLDER = "out/board";

  /** Of its own, so that nobody's board is in the way of the demo, nor the demo in theirs. */
  private static final String DEMO_FOLDER = "out/board-demo";

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FLOOR",
      description = "Floor file, YAML or JSON.")
  private @Nullable Path floor;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "SHOTLIST",
      description = "Shot list: XLSX, CSV, JSON or YAML.")
  private @Nullable Path shotList;

  @Parameters(
      index = "2",
      arity = "0..1",
      paramLabel = "PLAN",
      description = "Plan to begin with. Default: one by dispatch rules.")
  private @Nullable Path plan;

  @Option(
      names = "--demo",
      description =
          "Begin with an invented day of 150 jobs on 6 rigs, tomorrow or --date, or go on with the one that was begun.")
  private boolean demo;

  @Option(
      names = "--folder",
      paramLabel = "DIR",
      description =
          "Folder that holds the board. Default: " + FOLDER + ", with --demo " + DEMO_FOLDER + ".")
  private @Nullable Path folder;

  @Option(
      names = "--new",
      description = "Put the board in the folder aside under another name and begin anew.")
  private boolean putAside;

  @Option(
      names = "--past-days",
      paramLabel = "DIR",
      description = {
        "Folder of past days to compare scenarios on, as for whatif. Default: none; with --demo 30",
        "invented days."
      })
  private @Nullable Path pastDays;

  @Mixin private ReadingOptions reading;

  /**
   * Opens what is stored, or begins with what was given; never one in place of the other. A demo of
   * another day is gone on with like the one of tomorrow, unless the day was named.
   *
   * @throws RefusedException when something else is stored than what was given
   */
  public Desk open(Session session) throws IOException, InputException {
    Path named = named();
    Path at = at(session);
    Beginning beginning = beginning(session);
    if (putAside) {
      if (beginning == null) {
        throw refused("--new", "without files", "files to begin with, or --demo");
      }
      Aside.put(at, LocalDateTime.now(session.clock()))
          .ifPresent(old -> session.note("the old board is now " + old.getFileName()));
    }
    boolean stored = Files.exists(at.resolve(BoardStore.NAME));
    if (beginning == null) {
      return Desk.open(at, null, null, session.clock());
    }
    Desk desk = Desk.open(at, beginning.batch(), beginning.plan(), session.clock());
    if (stored) {
      if (!same(desk.begunWith(), beginning)) {
        desk.close();
        throw refused(
            named.toString(),
            "a board is stored there that began with other files, or another day",
            "no files to go on with it, --new to put it aside, or another --folder");
      }
      session.note("going on with the " + stored(desk.begunWith(), beginning, named));
    }
    return desk;
  }

  /**
   * What scenarios are compared on; nothing is read yet. To be asked for before the board is
   * opened: then nothing is begun beside a folder that is not there.
   *
   * @throws RefusedException when there is no such folder
   */
  public @Nullable DaySource pastDays(Session session) {
    if (pastDays != null) {
      return DaySource.folder(session.folder().resolve(pastDays));
    }
    return demo ? DaySource.demo(comparisons(session).resolve("demo")) : null;
  }

  /** The folder for what is compared. */
  public Path comparisons(Session session) {
    return at(session).resolve("whatif");
  }

  private Path named() {
    return folder == null ? Path.of(demo ? DEMO_FOLDER : FOLDER) : folder;
  }

  private Path at(Session session) {
    return session.folder().resolve(named());
  }

  private boolean same(Batch begun, Beginning given) {
    boolean anyDay = demo && reading.date() == null;
    Batch batch = anyDay ? demoBatch(begun.shotList().date()) : given.batch();
    return given.plan() == null && begun.equals(BoardStore.storable(batch));
  }

  private String stored(Batch begun, Beginning given, Path named) {
    if (!demo) {
      return "board that " + named + " holds";
    }
    LocalDate day = begun.shotList().date();
    LocalDate tomorrow = given.batch().shotList().date();
    return "demo of %s that %s holds%s"
        .formatted(
            day, named, day.equals(tomorrow) ? "" : "; --new begins with one of " + tomorrow);
  }

  /**
   * What a board is to begin with.
   *
   * @param plan null for one by dispatch rules
   */
  private record Beginning(Batch batch, @Nullable Plan plan) {}

  private @Nullable Beginning beginning(Session session) throws IOException, InputException {
    if (demo && floor != null) {
      throw refused("--demo", "together with files", "one of them");
    }
    boolean date = reading.date() != null && !demo;
    if (floor == null && (date || reading.givenBesidesDate())) {
      throw refused("options about a shot list", "without one", "a floor and a shot list");
    }
    if (demo) {
      LocalDate tomorrow = LocalDate.now(session.clock()).plusDays(1);
      return new Beginning(
          demoBatch(java.util.Objects.requireNonNullElse(reading.date(), tomorrow)), null);
    }
    if (floor == null) {
      return null;
    }
    if (shotList == null) {
      throw refused("SHOTLIST", "none", "a shot list beside the floor");
    }
    ShotListSource source = reading.source(floor, shotList);
    if (plan == null) {
      Batch batch = new Inputs(session).batch(source, null);
      Planning.noteEarlyPromises(batch, session);
      return new Beginning(batch, null);
    }
    PlannedBatch planned = new Inputs(session).planned(source, plan);
    return new Beginning(planned.batch(), planned.plan());
  }

  private static RefusedException refused(String what, String value, String accepted) {
    return new RefusedException(
        what + ": " + value + "; accepted: " + accepted,
        List.of(new InputProblem("", "command line", what, value, accepted)));
  }

  private static Batch demoBatch(LocalDate day) {
    return Demo.batch(DEMO_JOBS, 1, day);
  }
}
