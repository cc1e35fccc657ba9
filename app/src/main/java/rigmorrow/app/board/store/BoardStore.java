package rigmorrow.app.board.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import rigmorrow.app.files.RefusedException;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.shot.Batch;

/**
 * Every state a board was ever in, in one file of its folder. What a method has written is on the
 * disk when it returns; what fails has changed nothing. One thread is served at a time.
 */
public final class BoardStore implements AutoCloseable {
  /** The file in the board's folder. */
  public static final String NAME = "board.sqlite";

  private final Path path;
  private final BoardFile file;
  private final FolderLock lock;
  private final Connection connection;
  private final States states;
  private final Steps steps;
  private final Versions versions;

  private BoardStore(Path path, BoardFile file, FolderLock lock, Connection connection) {
    this.path = path;
    this.file = file;
    this.lock = lock;
    this.connection = connection;
    this.states = new States(connection, file);
    this.steps = new Steps(connection);
    this.versions = new Versions(connection);
  }

  /** Something that is asked of the data base. */
  private interface Work<T> {
    T run() throws SQLException;
  }

  /**
   * Opens the file of a folder; folder and file are made when they are not there.
   *
   * @throws RefusedException when another process has the folder, or the file is damaged, or not of
   *     this program, or of a newer version of it
   */
  public static BoardStore open(Path folder) {
    FolderLock lock = FolderLock.of(folder);
    try {
      Path path = folder.resolve(NAME);
      BoardFile file = new BoardFile(path);
      return new BoardStore(path, file, lock, file.open());
    } catch (RuntimeException e) {
      lock.close();
      throw e;
    }
  }

  /**
   * A batch as the file will hold it.
   *
   * @throws RefusedException when it cannot, with everything that is in the way
   */
  public static Batch storable(Batch batch) {
    try {
      return Contents.readBack(batch);
    } catch (InputException e) {
      throw new RefusedException("" + e.getMessage(), e.problems());
    }
  }

  /** Tells this board from every other, also from one that began in the same folder. */
  public synchronized String id() {
    return read(() -> BoardFile.id(connection));
  }

  /** The last step; none in a new file. */
  public synchronized Optional<Step> last() {
    return read(steps::last);
  }

  /** Every step after a revision, the oldest first. */
  public synchronized List<Step> since(long revision) {
    return read(() -> steps.since(revision));
  }

  /** A state by its id. */
  public synchronized StoredState state(long id) {
    return read(() -> states.get(id));
  }

  /** The state that would be the plan there is after an undo, if there is one. */
  public synchronized Optional<StoredState> before(Step now) {
    return read(
        () -> {
          Optional<Long> parent = states.parent(now.state());
          return parent.isEmpty() ? Optional.empty() : Optional.of(states.get(parent.get()));
        });
  }

  /** The state that would be the plan there is after a redo, if there is one. */
  public synchronized Optional<StoredState> after(Step now) {
    return read(
        () -> {
          Optional<Long> next = states.next(now.state(), now.tip());
          return next.isEmpty() ? Optional.empty() : Optional.of(states.get(next.get()));
        });
  }

  /** Makes a new state the plan there is; what was undone cannot be done again. */
  public synchronized StoredState keep(StoredState.Content content) {
    return write(
        () -> {
          Step last = steps.last().orElse(null);
          long revision = last == null ? 1 : last.revision() + 1;
          StoredState state = states.add(last == null ? null : last.state(), revision, content);
          steps.add(
              new Step(
                  revision,
                  state.id(),
                  state.id(),
                  Step.Kind.KEPT,
                  content.sentence(),
                  content.at()));
          return state;
        });
  }

  /**
   * Goes a step back or forth.
   *
   * @param kind back or forth
   * @param to id of the state before or after the one there is
   * @param sentence what is undone or done again
   * @return the step that was made
   */
  public synchronized Step go(Step.Kind kind, long to, String sentence, Instant at) {
    return write(
        () -> {
          Step last = steps.last().orElseThrow();
          Step step = new Step(last.revision() + 1, to, last.tip(), kind, sentence, at);
          steps.add(step);
          return step;
        });
  }

  /** Notes what no plan of a state's batch can be below. */
  public synchronized void setBounds(long state, PlanBounds bounds) {
    write(
        () -> {
          states.setBounds(state, bounds);
          return bounds;
        });
  }

  /** Puts a state by. */
  public synchronized StoredVersion putBy(long state, String note, Instant at) {
    return write(() -> versions.add(state, note, at));
  }

  /** Every state that was put by, the oldest first. */
  public synchronized List<StoredVersion> versions() {
    return read(versions::all);
  }

  /** Number of the version that the crew works from; 0 for none. */
  public synchronized int published() {
    return read(versions::published);
  }

  /** Notes which version the crew works from. */
  public synchronized void publish(int number, Instant at) {
    write(
        () -> {
          versions.publish(number, at);
          return at;
        });
  }

  /** The file is not what this program writes, as somebody found who read a state of it. */
  public RefusedException damaged(String how) {
    return file.damaged(how);
  }

  @Override
  public synchronized void close() {
    try {
      connection.close();
    } catch (SQLException e) {
      throw new StoreException(path + " could not be closed: " + e.getMessage(), e);
    } finally {
      lock.close();
    }
  }

  private <T> T read(Work<T> work) {
    try {
      T read = work.run();
      connection.rollback();
      return read;
    } catch (SQLException e) {
      throw failed(e, "read");
    } catch (DateTimeException | IllegalArgumentException e) {
      throw file.damaged("" + e.getMessage());
    }
  }

  private <T> T write(Work<T> work) {
    try {
      T written = work.run();
      connection.commit();
      return written;
    } catch (SQLException e) {
      takeBack();
      throw failed(e, "written");
    } catch (RuntimeException e) {
      takeBack();
      throw e;
    }
  }

  private void takeBack() {
    states.forget();
    try {
      connection.rollback();
    } catch (SQLException e) {
      throw failed(e, "written");
    }
  }

  private RuntimeException failed(SQLException e, String done) {
    boolean damaged =
        e instanceof SQLiteException sqlite
            && (sqlite.getResultCode() == SQLiteErrorCode.SQLITE_CORRUPT
                || sqlite.getResultCode() == SQLiteErrorCode.SQLITE_NOTADB);
    return damaged
        ? file.damaged("" + e.getMessage())
        : new StoreException(path + " could not be " + done + ": " + e.getMessage(), e);
  }
}
