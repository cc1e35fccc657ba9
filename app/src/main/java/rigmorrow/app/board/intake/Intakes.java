package rigmorrow.app.board.intake;

import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import rigmorrow.data.InputFile;
import rigmorrow.data.table.CellEdit;
import rigmorrow.model.floor.Floor;

/** The files that were dropped last, in memory only. For any thread. */
public final class Intakes {
  /** How many are kept; a new one pushes out the oldest. */
  public static final int MOST = 8;

  private static final long MOST_BYTES = 64L * 1024 * 1024;
  private static final int ID_BYTES = 8;

  private final SecureRandom random = new SecureRandom();
  private final Map<String, Intake> kept = new LinkedHashMap<>();

  /** Takes a file in. */
  public Intake add(InputFile file, IntakeOptions options, Floor floor, Reading.Usual usual) {
    byte[] id = new byte[ID_BYTES];
    random.nextBytes(id);
    Intake intake = Intake.of(HexFormat.of().formatHex(id), file, options, floor, usual);
    keep(intake);
    return intake;
  }

  /** One of them; nothing when it was pushed out or never there. */
  public synchronized Optional<Intake> find(String id) {
    return Optional.ofNullable(kept.get(id));
  }

  /**
   * Mends cells of one.
   *
   * @throws IllegalArgumentException when it has no such cells
   */
  public Optional<Intake> mend(String id, List<CellEdit> edits, Floor floor) {
    return change(id, intake -> intake.mended(edits, floor));
  }

  /** Reads one in another way. */
  public Optional<Intake> readAs(String id, IntakeOptions options, Floor floor) {
    return change(id, intake -> intake.readAs(options, floor));
  }

  private synchronized Optional<Intake> change(String id, UnaryOperator<Intake> change) {
    Intake changed = kept.computeIfPresent(id, (key, intake) -> change.apply(intake));
    return Optional.ofNullable(changed);
  }

  private synchronized void keep(Intake intake) {
    kept.put(intake.id(), intake);
    while (kept.size() > MOST || (kept.size() > 1 && bytes() > MOST_BYTES)) {
      kept.remove(kept.keySet().iterator().next());
    }
  }

  private long bytes() {
    return kept.values().stream().mapToLong(intake -> intake.file().bytes().length).sum();
  }
}
