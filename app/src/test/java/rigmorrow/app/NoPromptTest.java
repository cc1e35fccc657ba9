package rigmorrow.app;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** Expectation 8: nothing ever waits for somebody to type. */
class NoPromptTest {
  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("rigmorrow.app");

  @Test
  void looksAtTheWholeProgram() {
    assertThat(PROGRAM.contain(Main.class)).isTrue();
  }

  @Test
  void neverReadsStandardInput() {
    noClasses().should().accessField(System.class, "in").check(PROGRAM);
  }

  @Test
  void neverReadsFromTheConsole() {
    noClasses()
        .should()
        .callMethodWhere(
            com.tngtech.archunit.core.domain.JavaCall.Predicates.target(
                com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner(
                    com.tngtech.archunit.core.domain.JavaClass.Predicates.type(
                        java.io.Console.class))))
        .check(PROGRAM);
  }
}
