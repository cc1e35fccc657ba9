package rigmorrow.app.whatif.plans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.app.whatif.plans.ProgramBuild.Part;
import rigmorrow.model.floor.Floor;
import rigmorrow.solver.FloorSolver;

class ProgramBuildTest {
  private static final String MODEL = "rigmorrow/model/";
  private static final String SOLVER = "rigmorrow/solver/";

  @TempDir Path folder;
  private Path model;
  private Path solver;

  @BeforeEach
  void write() throws Exception {
    model = folder.resolve("model");
    solver = folder.resolve("solver");
    write(model, "rigmorrow/model/A.class", "a");
    write(model, "rigmorrow/model/deep/B.class", "b");
    write(solver, "rigmorrow/solver/C.class", "c");
  }

  private static void write(Path place, String name, String content) throws Exception {
    Path file = place.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, content);
  }

  private String name() {
    return ProgramBuild.of(List.of(new Part(model, MODEL), new Part(solver, SOLVER)));
  }

  /** Both folders in one jar, in another order, with others' classes and resources. */
  private Path jar(List<Path> places) throws Exception {
    Path jar = folder.resolve("all.jar");
    try (OutputStream file = Files.newOutputStream(jar);
        JarOutputStream out = new JarOutputStream(file)) {
      List<Path> turned = new ArrayList<>(places);
      Collections.reverse(turned);
      out.putNextEntry(new JarEntry("another/Library.class"));
      out.write(7);
      for (Path place : turned) {
        try (Stream<Path> all = Files.walk(place)) {
          for (Path one : all.filter(Files::isRegularFile).sorted().toList()) {
            out.putNextEntry(new JarEntry(place.relativize(one).toString().replace('\\', '/')));
            out.write(Files.readAllBytes(one));
          }
        }
      }
    }
    return jar;
  }

  @Test
  void theBuildThatRunsHasAName() {
    assertThat(ProgramBuild.name()).matches("[0-9a-f]{16}").isEqualTo(ProgramBuild.name());
  }

  @Test
  void everyClassOfModelAndSolverCountsAndNothingElse() throws Exception {
    String first = name();
    write(model, "rigmorrow/model/notes.txt", "x");
    write(solver, "rigmorrow/other/D.class", "x");
    assertThat(name()).isEqualTo(first);
    write(model, "rigmorrow/model/deep/B.class", "bb");
    String other = name();
    assertThat(other).isNotEqualTo(first);
    write(solver, "rigmorrow/solver/C.class", "d");
    assertThat(name()).isNotEqualTo(other).isNotEqualTo(first);
    write(model, "rigmorrow/model/deep/B.class", "b");
    write(solver, "rigmorrow/solver/C.class", "c");
    assertThat(name()).isEqualTo(first);
    Files.move(model.resolve("rigmorrow/model/A.class"), model.resolve("rigmorrow/model/Z.class"));
    assertThat(name()).isNotEqualTo(first);
  }

  @Test
  void aJarOfTheSameClassesHasTheSameName() throws Exception {
    Path jar = jar(List.of(model, solver));
    assertThat(ProgramBuild.of(List.of(new Part(jar, MODEL), new Part(jar, SOLVER))))
        .isEqualTo(name());
  }

  /** The classes of this very build, wherever the tests have them from. */
  @Test
  void theClassesThatRunAreThoseThatAreNamed() throws Exception {
    Path ofModel = place(Floor.class);
    Path ofSolver = place(FloorSolver.class);
    assertThat(ProgramBuild.of(List.of(new Part(ofModel, MODEL), new Part(ofSolver, SOLVER))))
        .isEqualTo(ProgramBuild.name());
    if (Files.isDirectory(ofModel) && Files.isDirectory(ofSolver)) {
      Path jar = jar(List.of(ofModel, ofSolver));
      assertThat(ProgramBuild.of(List.of(new Part(jar, MODEL), new Part(jar, SOLVER))))
          .isEqualTo(ProgramBuild.name());
    }
  }

  private static Path place(Class<?> one) throws Exception {
    return Path.of(one.getProtectionDomain().getCodeSource().getLocation().toURI());
  }

  @Test
  void aPlaceWithoutItsClassesIsNoBuild() {
    assertThatThrownBy(() -> ProgramBuild.of(List.of(new Part(solver, MODEL))))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("no classes");
  }
}
