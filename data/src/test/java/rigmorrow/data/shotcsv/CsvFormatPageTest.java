package rigmorrow.data.shotcsv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CsvFormatPageTest {
  private static final List<String> LINES = lines();

  @ParameterizedTest
  @EnumSource(CsvColumn.class)
  void namesEveryColumnWithItsFieldAndSynonyms(CsvColumn column) {
    String start = "| " + column.title() + " | `" + column.field().key() + "` |";
    List<String> rows = LINES.stream().filter(line -> line.startsWith(start)).toList();
    assertThat(rows).as("line of %s", column.title()).hasSize(1);
    String[] cells = rows.get(0).split("\\s*\\|\\s*");
    String synonyms = cells[cells.length - 1];
    assertThat(List.of(synonyms.replace("`", "").split(", ")))
        .containsExactlyElementsOf(column.synonyms());
  }

  @Test
  void namesEveryUnitAndWord() {
    String page = String.join("\n", LINES);
    List<String> words = new ArrayList<>();
    Stream.of(CsvUnit.values()).forEach(unit -> words.addAll(unit.spellings()));
    words.addAll(CellReader.YES);
    words.addAll(CellReader.NO);
    words.addAll(CellReader.HEIGHT_SOURCES.keySet());
    assertThat(words).hasSizeGreaterThan(30);
    assertThat(words).allSatisfy(word -> assertThat(page).contains("`" + word + "`"));
  }

  private static List<String> lines() {
    try {
      return Files.readAllLines(Path.of("FORMAT-csv-section.md"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
