package rigmorrow.model.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.opentest4j.TestAbortedException;

class OutsideCheckTest {
  private static final String HEAD =
      "| what | source | expected | ours | test |\n|---|---|---|---|---|\n";

  @TempDir private Path folder;
  private Path page;

  @BeforeEach
  void startAPage() throws IOException {
    page = folder.resolve("page.md");
    Files.writeString(page, "# Page\n\n## one\n\nold\n\n## two\n\nkept\n");
  }

  @Test
  void failsWhereOursIsNotWhatIsPublished() {
    assertThatThrownBy(() -> check(Figure.equal("", 2, 3)).verify())
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("expected=2, ours=3");
  }

  @Test
  void failsWithoutFigures() {
    assertThatThrownBy(() -> check().verify()).isInstanceOf(AssertionError.class);
  }

  @Test
  void isSkippedWithItsReason() {
    assertThatThrownBy(() -> check().skippedFor("needs a file").verify())
        .isInstanceOf(TestAbortedException.class)
        .hasMessageContaining("needs a file");
  }

  @Test
  void acceptsWhatIsWithinThePrintedDecimals() {
    assertThat(Figure.rounded("", "0.48", 0.4849).holds()).isTrue();
    assertThat(Figure.rounded("", "0.48", 0.4851).holds()).isFalse();
    assertThat(Figure.rounded("", "5", 5.0001).holds()).isFalse();
    assertThat(Figure.near("", ".94", 0.005, 0.934).holds()).isFalse();
    assertThat(Figure.between("", 19, 22, 22.01).holds()).isFalse();
    assertThat(Figure.atLeast("", 10, 9).holds()).isFalse();
    assertThat(Figure.atMost("", 10, 12, 13).holds()).isFalse();
    assertThat(Figure.atMost("", 10, 12, 9).holds()).isFalse();
    assertThat(Figure.atMost("", 10, 12, 11).ours()).isEqualTo("11 (+10.0 %; bar 12)");
    assertThat(Figure.atMost("", 10, 12, 10).ours()).isEqualTo("10");
  }

  @Test
  void writesItsSectionAndNoOther() throws IOException {
    OutsidePage.holdsSection(page, "one", List.of(check(Figure.equal("", 2, 2))), true);
    String written = "# Page\n\n## one\n\n" + HEAD + "| sum | book | 2 | 2 | OutsideCheckTest |\n";
    assertThat(page).hasContent(written + "\n## two\n\nkept\n");
    OutsidePage.holdsSection(page, "one", List.of(check(Figure.equal("", 2, 2))), false);
  }

  @Test
  void writesANewSectionAtTheEnd() throws IOException {
    OutsidePage.holdsSection(page, "three", List.of(check(Figure.equal("", 2, 2))), true);
    assertThat(page).content().contains("old").contains("kept\n\n## three\n");
    OutsidePage.holdsSection(page, "three", List.of(check(Figure.equal("", 2, 2))), false);
  }

  @Test
  void refusesAPageThatSaysSomethingElse() {
    assertThatThrownBy(
            () ->
                OutsidePage.holdsSection(
                    page, "one", List.of(check(Figure.equal("", 2, 2))), false))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("page.md, section one");
  }

  @Test
  void keepsTheRowOfASkippedCheck() throws IOException {
    OutsideCheck check = check(Figure.equal("", 2, 2));
    OutsidePage.holdsSection(page, "one", List.of(check), true);
    String before = Files.readString(page);
    OutsidePage.holdsSection(page, "one", List.of(check.skippedFor("needs a file")), false);
    OutsidePage.holdsSection(page, "one", List.of(check.skippedFor("needs a file")), true);
    assertThat(page).hasContent(before);
  }

  @Test
  void writesNoPageWithACheckThatFails() throws IOException {
    String before = Files.readString(page);
    assertThatThrownBy(
            () ->
                OutsidePage.holdsSection(page, "one", List.of(check(Figure.equal("", 2, 3))), true))
        .isInstanceOf(AssertionError.class);
    assertThat(page).hasContent(before);
  }

  @Test
  void countsFiguresWhereThereAreMany() throws IOException {
    Figure[] many =
        IntStream.range(0, 7).mapToObj(i -> Figure.equal("n" + i, i, i)).toArray(Figure[]::new);
    OutsidePage.holdsSection(page, "one", List.of(check(many)), true);
    assertThat(page).content().contains("| sum | book | 7 values | 7 agree | OutsideCheckTest |");
  }

  private static OutsideCheck check(Figure... figures) {
    return OutsideCheck.of("sum", "book", OutsideCheckTest.class, () -> List.of(figures));
  }
}
