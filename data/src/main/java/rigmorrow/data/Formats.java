package rigmorrow.data;

import java.io.IOException;
import java.nio.file.Path;
import rigmorrow.data.floor.FloorReader;
import rigmorrow.data.floor.FloorWriter;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.floor.Floor;

/** The door to files: picks the format by a file's ending. */
public final class Formats {
  private Formats() {}

  /**
   * Reads a floor file (.json, .yaml or .yml).
   *
   * @throws InputException with everything that is wrong with the file
   * @throws IOException when the file system fails
   */
  public static Floor readFloor(Path file) throws IOException, InputException {
    Trees.Notation notation = notation(file);
    return FloorReader.read(file.toString(), InputFile.text(file), notation);
  }

  /**
   * Writes a floor file (.json, .yaml or .yml), whole or not at all.
   *
   * @throws InputException when the ending is no floor file's
   * @throws IOException when it cannot be written
   */
  public static void writeFloor(Floor floor, Path file, SafeFile.Existing existing)
      throws IOException, InputException {
    SafeFile.write(file, FloorWriter.write(floor, notation(file)), existing);
  }

  private static Trees.Notation notation(Path file) throws InputException {
    return switch (InputFile.ending(file)) {
      case "json" -> Trees.Notation.JSON;
      case "yaml", "yml" -> Trees.Notation.YAML;
      default ->
          throw InputFile.refused(
              file, "another ending", "a name that ends in .json, .yaml or .yml");
    };
  }
}
