package rigmorrow.data.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigmorrow.data.samples.FormatPage;
import rigmorrow.data.samples.SamplePlans;
import rigmorrow.data.samples.Samples;

class PlanCsvTest {
  private final String text =
      PlanCsvWriter.write(
          SamplePlans.tiny(LocalDate.of(2026, 11, 26)), Samples.tinyShots(), "Version 3");

  @Test
  void writesOneRowForEachJobPlannedOrLeftOut() throws Exception {
    assertThat(rows()).hasSize(4);
    assertThat(rows()).allSatisfy(row -> assertThat(row).hasSize(rows().get(0).length));
    assertThat(rows().get(1))
        .containsExactly(
            "t1",
            "1",
            "bag-spin",
            "004711",
            "Shoulder bag, brown",
            "2026-11-26 02:00:00",
            "2026-11-26 02:04:00",
            "2026-11-26 02:04:00",
            "2026-11-26 02:06:40",
            "2026-11-26 02:06:40",
            "2026-11-26 02:08:20",
            "2026-11-26 02:08:20",
            "2026-11-26 02:09:05",
            "ada ben",
            "rotator-1",
            "2026-11-26 15:00:00",
            "yes",
            "2",
            "",
            "Version 3");
    assertThat(rows().get(3))
        .startsWith("", "", "unknown-size")
        .endsWith("Length is not known. Mass is not known.", "Version 3");
  }

  @Test
  void namesEveryColumnInTheDescription() {
    String page = FormatPage.text("Plan as a table");
    assertThat(PlanCsvWriter.headings())
        .allSatisfy(heading -> assertThat(page).contains("`" + heading + "`"));
  }

  @Test
  void endsEveryLineAsRfc4180Asks() {
    assertThat(text).endsWith("\r\n");
    assertThat(text.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "=1+2|'=1+2",
        "+49 30|'+49 30",
        "-5|'-5",
        "@sum|'@sum",
        "a=b|a=b",
        "a,b|\"a,b\"",
        "6\" disc|\"6\"\" disc\"",
        "=\"x\",1|\"'=\"\"x\"\",1\""
      })
  void keepsCellsFromBeingRunOrSplit(String value, String cell) {
    assertThat(PlanCsvWriter.cell(value)).isEqualTo(cell);
  }

  @Test
  void keepsLineBreaksInsideQuotes() {
    assertThat(PlanCsvWriter.cell("a\nb")).isEqualTo("\"a\nb\"");
    assertThat(PlanCsvWriter.cell("\tx")).isEqualTo("'\tx");
  }

  private List<String[]> rows() throws Exception {
    try (MappingIterator<String[]> rows =
        new CsvMapper()
            .readerFor(String[].class)
            .with(CsvParser.Feature.WRAP_AS_ARRAY)
            .readValues(text)) {
      return rows.readAll();
    }
  }
}
