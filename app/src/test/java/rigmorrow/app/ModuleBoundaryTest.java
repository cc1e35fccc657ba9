package rigmorrow.app;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Which module may know which. It lives here because app sees all the others; only benchmarks is
 * out of its sight, and there the poms hold the line: no module lists benchmarks, and benchmarks
 * does not list app.
 */
class ModuleBoundaryTest {

  private static final JavaClasses FLOOR =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .withImportOption(location -> !location.contains("-tests.jar"))
          .importPackages("rigmorrow");

  @ParameterizedTest
  @ValueSource(strings = {"model", "solver", "data", "app"})
  void seesTheModule(String module) {
    assertThat(FLOOR.containPackage("rigmorrow." + module)).isTrue();
  }

  @Test
  void leavesTestsOut() {
    assertThat(FLOOR.contain(ModuleBoundaryTest.class)).isFalse();
  }

  @Test
  void modelKnowsOnlyTheJdk() {
    classes()
        .that()
        .resideInAPackage("rigmorrow.model..")
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage("rigmorrow.model..", "java..", "org.jspecify..")
        .check(FLOOR);
  }

  @Test
  void solverDoesNotKnowData() {
    noClasses()
        .that()
        .resideInAPackage("rigmorrow.solver..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("rigmorrow.data..")
        .check(FLOOR);
  }

  @Test
  void dataDoesNotKnowSolver() {
    noClasses()
        .that()
        .resideInAPackage("rigmorrow.data..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("rigmorrow.solver..", "org.optaplanner..")
        .check(FLOOR);
  }

  @Test
  void nobodyElseKnowsApp() {
    noClasses()
        .that()
        .resideOutsideOfPackage("rigmorrow.app..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("rigmorrow.app..")
        .check(FLOOR);
  }

  @Test
  void packagesFormNoCycles() {
    slices().matching("rigmorrow.(**)").should().beFreeOfCycles().check(FLOOR);
  }
}
