package rigmorrow.data;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;

/** Gets at the content of an input file, or tells why not. */
final class InputFile {
  private static final long MOST_BYTES = 64L * 1024 * 1024;

  private InputFile() {}

  /** The bytes of a file. */
  static byte[] bytes(Path file) throws IOException, InputException {
    if (!Files.exists(file)) {
      throw refused(file, "nothing of that name", "a file that is there");
    }
    if (!Files.isRegularFile(file)) {
      throw refused(file, "a folder or device", "a file");
    }
    if (!Files.isReadable(file)) {
      throw refused(file, "not readable", "a file you may read");
    }
    if (Files.size(file) > MOST_BYTES) {
      throw refused(file, Files.size(file) + " bytes", "at most " + MOST_BYTES + " bytes");
    }
    return Files.readAllBytes(file);
  }

  /** The text of a file in UTF-8, without a byte order mark. */
  static String text(Path file) throws IOException, InputException {
    byte[] bytes = bytes(file);
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw refused(file, "bytes that are no UTF-8", "a text in UTF-8");
    }
  }

  /** What follows the last dot of a file's name, in small letters; empty when there is no dot. */
  static String ending(Path file) {
    Path nameOrNull = file.getFileName();
    String name = nameOrNull == null ? "" : nameOrNull.toString();
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }

  /** One problem with a file as a whole. */
  static InputException refused(Path file, String value, String accepted) {
    return new InputException(
        List.of(new InputProblem(file.toString(), "file", "", value, accepted)));
  }
}
