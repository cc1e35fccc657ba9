package rigmorrow.data.csv;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.table.TableOptions;

/**
 * The text of a file and the character set it was read in.
 *
 * @param text without byte order mark
 * @param charset it was read in
 * @param charsetName as shown to the user
 * @param markBytes length of the byte order mark
 */
record CsvText(String text, Charset charset, String charsetName, int markBytes) {
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
  private static final int[] ZIP = {'P', 'K', 3, 4};
  private static final int[] OLD_WORKBOOK = {0xD0, 0xCF, 0x11, 0xE0};
  private static final int[] UTF_8_MARK = {0xEF, 0xBB, 0xBF};
  private static final int[] UTF_16_LE_MARK = {0xFF, 0xFE};
  private static final int[] UTF_16_BE_MARK = {0xFE, 0xFF};
  private static final String SAVE_AS = "a CSV text file; save the sheet as 'CSV UTF-8'";

  /**
   * Decodes strictly. A byte order mark decides; then the given character set, unless it was named
   * for another file and this is UTF-8 with letters beyond ASCII; then UTF-8; and where the bytes
   * are no UTF-8, Windows-1252.
   *
   * @throws InputException when the bytes are no text
   */
  static CsvText decode(byte[] bytes, TableOptions options, Problems problems)
      throws InputException {
    if (starts(bytes, ZIP) || starts(bytes, OLD_WORKBOOK)) {
      throw problems.refusal(
          "a workbook or archive", "a CSV text file; the name of a workbook ends in .xlsx");
    }
    CsvText text = decoded(bytes, options);
    if (text == null) {
      throw problems.refusal("bytes that are no text", SAVE_AS + " or name its character set");
    }
    int row = 1;
    for (int i = 0; i < text.text.length(); i++) {
      char sign = text.text.charAt(i);
      if (sign == '\n') {
        row++;
      } else if (sign < ' ' && sign != '\t' && sign != '\r') {
        problems.add(
            "line " + row, "", String.format("control character U+%04X", (int) sign), SAVE_AS);
        problems.throwIfAny();
      }
    }
    return text;
  }

  private static @Nullable CsvText decoded(byte[] bytes, TableOptions options) {
    if (starts(bytes, UTF_8_MARK)) {
      return strictly(bytes, 3, StandardCharsets.UTF_8, "UTF-8 with byte order mark");
    }
    if (starts(bytes, UTF_16_LE_MARK)) {
      return strictly(bytes, 2, StandardCharsets.UTF_16LE, "UTF-16");
    }
    if (starts(bytes, UTF_16_BE_MARK)) {
      return strictly(bytes, 2, StandardCharsets.UTF_16BE, "UTF-16");
    }
    Charset given = options.charset();
    CsvText text = strictly(bytes, 0, StandardCharsets.UTF_8, "UTF-8");
    boolean found = options.charsetIfNotUtf8() && text != null && !ascii(bytes);
    if (given != null && !found) {
      return strictly(bytes, 0, given, given.displayName(Locale.ROOT));
    }
    return text != null ? text : strictly(bytes, 0, WINDOWS_1252, "Windows-1252");
  }

  private static boolean ascii(byte[] bytes) {
    for (byte one : bytes) {
      if (one < 0) {
        return false;
      }
    }
    return true;
  }

  private static @Nullable CsvText strictly(byte[] bytes, int from, Charset charset, String name) {
    try {
      String text =
          charset
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes, from, bytes.length - from))
              .toString();
      return new CsvText(text, charset, name, from);
    } catch (CharacterCodingException e) {
      return null;
    }
  }

  private static boolean starts(byte[] bytes, int[] mark) {
    if (bytes.length < mark.length) {
      return false;
    }
    for (int i = 0; i < mark.length; i++) {
      if ((bytes[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }
}
