package rigmorrow.data;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;

/**
 * The content of an input file with its name, wherever both came from. The name tells the format by
 * its ending and is shown in problems; nothing is ever opened by it.
 *
 * @param name as the user gave it
 * @param bytes its content
 */
public record InputFile(String name, byte[] bytes) {
  private static final long MOST_BYTES = 64L * 1024 * 1024;
  private static final Set<String> TEXT_ENDINGS = Set.of("csv", "tsv", "txt");
  private static final Set<String> WORKBOOK_ENDINGS = Set.of("xlsx", "xlsm");

  /**
   * Reads a file.
   *
   * @throws InputException when it is none that may be read
   * @throws IOException when the file system fails
   */
  public static InputFile read(Path file) throws IOException, InputException {
    if (!Files.exists(file)) {
      throw refused(file.toString(), "nothing of that name", "a file that is there");
    }
    if (!Files.isRegularFile(file)) {
      throw refused(file.toString(), "a folder or device", "a file");
    }
    if (!Files.isReadable(file)) {
      throw refused(file.toString(), "not readable", "a file you may read");
    }
    if (Files.size(file) > MOST_BYTES) {
      String accepted = "at most " + MOST_BYTES + " bytes";
      throw refused(file.toString(), Files.size(file) + " bytes", accepted);
    }
    return new InputFile(file.toString(), Files.readAllBytes(file));
  }

  /** What follows the last dot of a file's name, in small letters; empty when there is no dot. */
  static String ending(String name) {
    String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
    return last.substring(last.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }

  /** True when the name is that of a table: .csv, .tsv or .txt, .xlsx or .xlsm. */
  public static boolean isTable(String name) {
    return TEXT_ENDINGS.contains(ending(name)) || isWorkbook(name);
  }

  /** True when the name is that of a workbook: .xlsx or .xlsm. */
  public static boolean isWorkbook(String name) {
    return WORKBOOK_ENDINGS.contains(ending(name));
  }

  /** One problem with a file as a whole. */
  static InputException refused(String name, String value, String accepted) {
    return new InputException(List.of(new InputProblem(name, "file", "", value, accepted)));
  }

  /** The text in UTF-8, without a byte order mark. */
  String text() throws InputException {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw refused(name, "bytes that are no UTF-8", "a text in UTF-8");
    }
  }
}
