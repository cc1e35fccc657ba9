package rigmorrow.app.whatif.plans;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.CodeSource;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Enumeration;
import java.util.HexFormat;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import rigmorrow.model.floor.Floor;
import rigmorrow.solver.FloorSolver;

/**
 * Names the build of the program by what plans and their figures rest on: the classes of the model
 * and of the solver. Programs under way all have one version, and plans of an earlier search are
 * not to be taken for plans of this one. It is the same for the same classes, whether they lie in
 * folders or in a jar, and needs nothing that only a checkout has.
 */
public final class ProgramBuild {
  private static final int DIGITS = 16;

  private ProgramBuild() {}

  /** Worked out when it is first asked for, and never again. */
  private static final class This {
    private static final String NAME =
        of(
            List.of(
                new Part(place(Floor.class), "rigmorrow/model/"),
                new Part(place(FloorSolver.class), "rigmorrow/solver/")));
  }

  /**
   * Classes.
   *
   * @param place a folder or a jar that they are in, and others too
   * @param folder in it, with a stroke at its end
   */
  record Part(Path place, String folder) {}

  /** The name of the build that runs. */
  public static String name() {
    return This.NAME;
  }

  /** The name of a build of these classes. */
  static String of(List<Part> parts) {
    // A jar has a check sum of every file in its table of contents, so none has to be unpacked.
    SortedSet<String> sums = new TreeSet<>();
    try {
      for (Part part : parts) {
        int before = sums.size();
        if (Files.isDirectory(part.place())) {
          folder(part, sums);
        } else {
          jar(part, sums);
        }
        if (sums.size() == before) {
          throw new IllegalStateException("no classes of " + part);
        }
      }
      MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
      sums.forEach(sum -> sha256.update((sum + "\n").getBytes(StandardCharsets.UTF_8)));
      return HexFormat.of().formatHex(sha256.digest()).substring(0, DIGITS);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every JDK has SHA-256", e);
    }
  }

  private static void folder(Part part, SortedSet<String> sums) throws IOException {
    Path folder = part.place().resolve(part.folder());
    if (!Files.isDirectory(folder)) {
      return;
    }
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            String name = part.place().relativize(file).toString().replace('\\', '/');
            if (counts(part, name)) {
              byte[] bytes = Files.readAllBytes(file);
              CRC32 crc = new CRC32();
              crc.update(bytes);
              sums.add(sum(name, crc.getValue(), bytes.length));
            }
            return FileVisitResult.CONTINUE;
          }
        });
  }

  private static void jar(Part part, SortedSet<String> sums) throws IOException {
    try (ZipFile jar = new ZipFile(part.place().toFile())) {
      Enumeration<? extends ZipEntry> entries = jar.entries();
      while (entries.hasMoreElements()) {
        ZipEntry entry = entries.nextElement();
        if (counts(part, entry.getName())) {
          sums.add(sum(entry.getName(), entry.getCrc(), entry.getSize()));
        }
      }
    }
  }

  private static boolean counts(Part part, String name) {
    return name.startsWith(part.folder()) && name.endsWith(".class");
  }

  private static String sum(String name, long crc, long size) {
    return name + " " + crc + " " + size;
  }

  private static Path place(Class<?> one) {
    CodeSource source = one.getProtectionDomain().getCodeSource();
    if (source == null) {
      throw new IllegalStateException("nobody knows where " + one + " lies");
    }
    try {
      return Path.of(source.getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException("the place of " + one + " is no address", e);
    }
  }
}
