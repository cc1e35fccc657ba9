package rigmorrow.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SafeFileTest {
  @TempDir private Path folder;

  @Test
  void writesANewFile() throws IOException {
    Path file = folder.resolve("plan.json");
    SafeFile.write(file, "Grün", SafeFile.Existing.KEEP);
    assertThat(file).hasContent("Grün");
    assertThat(names()).containsExactly("plan.json");
  }

  @Test
  void keepsAnOldFileUnlessTold() throws IOException {
    Path file = Files.writeString(folder.resolve("plan.json"), "old");
    assertThatThrownBy(() -> SafeFile.write(file, "new", SafeFile.Existing.KEEP))
        .isInstanceOf(FileAlreadyExistsException.class)
        .hasMessageContaining("plan.json");
    assertThat(file).hasContent("old");
    assertThat(names()).containsExactly("plan.json");
  }

  @Test
  void replacesAnOldFileWhenTold() throws IOException {
    Path file = Files.writeString(folder.resolve("plan.json"), "a much longer old text");
    SafeFile.write(file, "new", SafeFile.Existing.REPLACE);
    assertThat(file).hasContent("new");
    assertThat(names()).containsExactly("plan.json");
  }

  @Test
  void leavesNothingBehindWhenItFails() throws IOException {
    Path inTheWay = Files.createDirectory(folder.resolve("plan.json"));
    Files.writeString(inTheWay.resolve("x"), "x");
    assertThatThrownBy(() -> SafeFile.write(inTheWay, "new", SafeFile.Existing.REPLACE))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("folder");
    assertThat(names()).containsExactly("plan.json");
  }

  @Test
  void namesAFolderThatIsMissing() {
    Path file = folder.resolve("no/plan.json");
    assertThatThrownBy(() -> SafeFile.write(file, "new", SafeFile.Existing.KEEP))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("no folder");
  }

  @Test
  void givesTheFileTheRightsOfAnyOther() throws IOException {
    Path file = folder.resolve("plan.json");
    SafeFile.write(file, "new", SafeFile.Existing.KEEP);
    Path other = Files.writeString(folder.resolve("other"), "x");
    assumeThat(Files.getFileStore(folder).supportsFileAttributeView("posix")).isTrue();
    assertThat(Files.getPosixFilePermissions(file)).isEqualTo(Files.getPosixFilePermissions(other));
  }

  private Stream<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).toList().stream();
    }
  }
}
