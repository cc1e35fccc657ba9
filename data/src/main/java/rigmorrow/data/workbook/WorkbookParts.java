package rigmorrow.data.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.xml.stream.XMLStreamException;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Problems;

/** The XML parts of a workbook file, unpacked within bounds; pictures and the like are left out. */
final class WorkbookParts {
  /** What all parts together may be unpacked. */
  static final long MOST_BYTES = 128L * 1024 * 1024;

  private static final int MOST_PARTS = 10_000;
  private static final int BUFFER_BYTES = 64 * 1024;
  private static final byte[] ZIP = {'P', 'K', 3, 4};
  private static final byte[] ZIP_END = {'P', 'K', 5, 6};

  /** The end of a zip file: 22 bytes and a comment of up to 65,535 (zip file format, 4.3.16). */
  private static final int LONGEST_END = 22 + 65_535;

  /** A compound file (Microsoft, MS-CFB, 2.2), which an .xls and a workbook with a password are. */
  private static final byte[] COMPOUND_FILE = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};

  /** The stream that holds a workbook with a password (Microsoft, MS-OFFCRYPTO, 1.3.3). */
  private static final byte[] ENCRYPTED = "EncryptedPackage".getBytes(StandardCharsets.UTF_16LE);

  private final Map<String, byte[]> parts;

  private WorkbookParts(Map<String, byte[]> parts) {
    this.parts = parts;
  }

  /**
   * Unpacks a file.
   *
   * @throws InputException when it is none, is damaged, or holds too much
   */
  static WorkbookParts unpack(byte[] bytes, Problems problems) throws InputException {
    if (starts(bytes, COMPOUND_FILE)) {
      boolean encrypted = indexOf(bytes, ENCRYPTED, 0) >= 0;
      throw encrypted
          ? problems.refusal("a workbook with a password", "a workbook saved without a password")
          : problems.refusal("a workbook of the old kind (.xls)", "a workbook saved as .xlsx");
    }
    if (!starts(bytes, ZIP)) {
      throw problems.refusal(
          "no workbook", "a workbook (.xlsx); the name of a CSV file ends in .csv");
    }
    if (indexOf(bytes, ZIP_END, Math.max(0, bytes.length - LONGEST_END)) < 0) {
      throw problems.refusal("a file that is cut off", "a workbook that is complete");
    }
    // By its central directory: spreadsheets leave sizes out of the headers in between.
    try (ZipFile zip = ZipFile.builder().setByteArray(bytes).get()) {
      WorkbookParts parts = new WorkbookParts(unpacked(zip, problems));
      if (parts.part("[Content_Types].xml") == null) {
        throw problems.refusal("an archive that is no workbook", "a workbook (.xlsx)");
      }
      return parts;
    } catch (IOException | RuntimeException e) {
      throw damaged(problems);
    }
  }

  /** The refusal of a file that is not what a spreadsheet writes. */
  static InputException damaged(Problems problems) {
    return problems.refusal(
        "a file that is damaged", "a workbook (.xlsx) that a spreadsheet opens and saves again");
  }

  /** The content of a part, with or without a slash in front; null when there is none. */
  byte @Nullable [] part(String name) {
    return parts.get(key(name));
  }

  /** Makes texts of dates in the parts with these names that are there. */
  void makeTextsOfDates(Collection<String> names) throws XMLStreamException {
    for (String name : names) {
      byte[] content = part(name);
      if (content != null) {
        parts.put(key(name), IsoDates.asTexts(content));
      }
    }
  }

  /** The parts as a file again. */
  byte[] packed() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      zip.setLevel(Deflater.BEST_SPEED);
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
      }
    }
    return bytes.toByteArray();
  }

  private static Map<String, byte[]> unpacked(ZipFile zip, Problems problems)
      throws IOException, InputException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    long left = MOST_BYTES;
    int count = 0;
    for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
      count++;
      if (count > MOST_PARTS) {
        throw problems.refusal("more than " + MOST_PARTS + " parts", "a workbook with fewer");
      }
      if (entry.getName().matches("(?i).*\\.(?:xml|rels)")) {
        byte[] content = unpacked(zip, entry, left, problems);
        left -= content.length;
        parts.put(key(entry.getName()), content);
      }
    }
    return parts;
  }

  private static byte[] unpacked(ZipFile zip, ZipArchiveEntry entry, long most, Problems problems)
      throws IOException, InputException {
    ByteArrayOutputStream content = new ByteArrayOutputStream();
    CRC32 checksum = new CRC32();
    byte[] buffer = new byte[BUFFER_BYTES];
    try (InputStream in = zip.getInputStream(entry)) {
      for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
        content.write(buffer, 0, read);
        checksum.update(buffer, 0, read);
        if (content.size() > most) {
          throw problems.refusal(
              "more than " + MOST_BYTES + " bytes unpacked",
              "a workbook with at most that; a shot list alone is much smaller");
        }
      }
    }
    if (checksum.getValue() != entry.getCrc()) {
      throw damaged(problems);
    }
    return content.toByteArray();
  }

  /** Names of parts are alike whatever their case (ECMA-376 part 2, 6.2.2.3). */
  private static String key(String name) {
    String plain = name.startsWith("/") ? name.substring(1) : name;
    return plain.toLowerCase(Locale.ROOT);
  }

  private static boolean starts(byte[] bytes, byte[] with) {
    return bytes.length >= with.length && at(bytes, with, 0);
  }

  private static int indexOf(byte[] bytes, byte[] sought, int from) {
    for (int start = from; start <= bytes.length - sought.length; start++) {
      if (at(bytes, sought, start)) {
        return start;
      }
    }
    return -1;
  }

  private static boolean at(byte[] bytes, byte[] sought, int start) {
    for (int i = 0; i < sought.length; i++) {
      if (bytes[start + i] != sought[i]) {
        return false;
      }
    }
    return true;
  }
}
