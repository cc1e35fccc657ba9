package rigmorrow.app.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rigmorrow.data.Formats;
import rigmorrow.data.SafeFile;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.floor.Floor;

/**
 * The folder a demo writes in. A list of checksums tells its own files, which a later demo may
 * replace, from files of the user's and from files that the user has changed since.
 */
public final class DemoFolder {
  /** In the form that {@code sha256sum --check} reads. */
  private static final String CHECKSUMS = "demo-files.sha256";

  private static final String GAP = "  ";

  private final Path path;

  /**
   * @param path of the folder
   */
  public DemoFolder(Path path) {
    this.path = path;
  }

  /** Where the folder is. */
  public Path path() {
    return path;
  }

  /**
   * Looks whether the files may be written.
   *
   * @throws RefusedException with every file that no demo wrote
   */
  public void refuseOthers(List<String> names, boolean overwrite) throws IOException {
    Map<String, String> own = checksums();
    for (String name : names) {
      Path file = path.resolve(name);
      boolean ours = Files.isRegularFile(file) && checksum(file).equals(own.get(name));
      OutputFiles.refuseExisting(List.of(file), overwrite || ours);
    }
  }

  /** Writes a floor file and keeps track of it. */
  public void write(Floor floor, String name) throws IOException, InputException {
    Files.createDirectories(path);
    Formats.writeFloor(floor, path.resolve(name), SafeFile.Existing.REPLACE);
    keepTrackOf(List.of(name));
  }

  /** Writes a file and keeps track of it. */
  public void write(String name, byte[] content) throws IOException {
    OutputFiles.write(path.resolve(name), content);
    keepTrackOf(List.of(name));
  }

  /** Notes that these files are the demo's own as they are now. */
  public void keepTrackOf(List<String> names) throws IOException {
    Map<String, String> own = checksums();
    for (String name : names) {
      own.put(name, checksum(path.resolve(name)));
    }
    StringBuilder lines = new StringBuilder();
    own.forEach((name, sum) -> lines.append(sum).append(GAP).append(name).append('\n'));
    OutputFiles.write(path.resolve(CHECKSUMS), lines.toString());
  }

  private Map<String, String> checksums() throws IOException {
    Map<String, String> own = new TreeMap<>();
    Path list = path.resolve(CHECKSUMS);
    if (Files.isRegularFile(list)) {
      for (String line : Files.readAllLines(list)) {
        String[] parts = line.split(GAP, 2);
        if (parts.length == 2) {
          own.put(parts[1], parts[0]);
        }
      }
    }
    return own;
  }

  private static String checksum(Path file) throws IOException {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(Files.readAllBytes(file)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every JDK has SHA-256", e);
    }
  }
}
