package rigmorrow.benchmarks.textbook;

import java.io.IOException;
import java.nio.file.Path;
import rigmorrow.data.Formats;
import rigmorrow.data.SafeFile;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.shot.Batch;

/** A textbook problem as the two files that a planner would write. */
public final class TextbookFiles {
  private static final String FLOOR = "floor.json";
  private static final String SHOT_LIST = "shot-list.json";

  private TextbookFiles() {}

  /**
   * Writes floor file and shot list into a folder that is there; replaces older ones.
   *
   * @throws IOException when they cannot be written
   */
  public static void write(TextbookProblem problem, Path folder) throws IOException {
    Batch batch = TextbookBatch.of(problem);
    try {
      Formats.writeFloor(batch.floor(), folder.resolve(FLOOR), SafeFile.Existing.REPLACE);
      Formats.writeShotList(batch.shotList(), folder.resolve(SHOT_LIST), SafeFile.Existing.REPLACE);
    } catch (InputException e) {
      throw new IllegalStateException("the endings are known", e);
    }
  }

  /**
   * Reads the two files with the ordinary readers.
   *
   * @throws IOException when they cannot be read
   * @throws InputException when something is wrong with them
   */
  public static Batch read(Path folder) throws IOException, InputException {
    Floor floor = Formats.readFloor(folder.resolve(FLOOR));
    return new Batch(floor, Formats.readShotList(folder.resolve(SHOT_LIST), floor));
  }
}
