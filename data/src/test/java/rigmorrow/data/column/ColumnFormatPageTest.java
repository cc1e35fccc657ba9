package rigmorrow.data.column;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigmorrow.data.samples.FormatPage;
import rigmorrow.data.table.ProblemColumn;
import rigmorrow.data.table.TableChoice;
import rigmorrow.data.table.TableOptions;

class ColumnFormatPageTest {
  private static final List<String> LINES =
      FormatPage.text("Shot list as a table").lines().toList();

  @ParameterizedTest
  @EnumSource(Column.class)
  void namesEveryColumnWithItsFieldAndSynonyms(Column column) {
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
    Stream.of(Unit.values()).forEach(unit -> words.addAll(unit.spellings()));
    words.addAll(CellReader.YES);
    words.addAll(CellReader.NO);
    words.addAll(CellReader.HEIGHT_SOURCES.keySet());
    assertThat(words).hasSizeGreaterThan(30);
    assertThat(words).allSatisfy(word -> assertThat(page).contains("`" + word + "`"));
  }

  @ParameterizedTest
  @EnumSource(Column.class)
  void namesTheColumnsOfASizesTable(Column column) {
    String start = "| " + column.title() + " | `" + column.field().key() + "` |";
    boolean named = FormatPage.text("Sizes from a device").contains(start);
    assertThat(named).isEqualTo(TableKind.SIZES.columns().contains(column));
  }

  @Test
  void namesTheOptionsOfASizesTable() {
    assertThat(FormatPage.text("Sizes from a device"))
        .contains("`" + TableChoice.DECIMAL.name(TableKind.SIZES, TableOptions.FIND) + "`")
        .contains("`" + TableChoice.SHEET.name(TableKind.SIZES, TableOptions.FIND) + "`");
  }

  @Test
  void namesTheHeaderOfTheProblems() {
    assertThat(String.join("\n", LINES)).contains("header `" + ProblemColumn.HEADER + "`");
  }
}
