package rigmorrow.data.shottable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.table.TableOptions;

/** A number that could be thousands or decimals is never guessed: a slip is a factor of 1,000. */
class TwoMeaningsTest {
  private static final String HEADER = "Article;Recipe;Height (mm);Width (cm);Mass (kg)\n";

  @ParameterizedTest
  @ValueSource(chars = {'.', ','})
  void asksForEveryNumberThatTheFileDoesNotSettle(char mark) {
    String sheet = HEADER + "1;spin-36;300;20.5;1,250\n2;spin-36;1.250;20.5;2.5\n";
    InputException refusal =
        catchThrowableOfType(
            InputException.class, () -> read(written(sheet, mark), TableOptions.FIND));
    assertThat(refusal.problems())
        .extracting(InputProblem::line)
        .containsExactly(
            written(
                "row 2, column E, Mass (kg): '1,250'; accepted: 1.2500 or 1250; or say which"
                    + " decimal mark the file has (--decimal)",
                mark),
            written(
                "row 3, column C, Height (mm): '1.250'; accepted: 1.2500 or 1250; or say which"
                    + " decimal mark the file has (--decimal)",
                mark));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "thousands with decimals elsewhere | 1,234.5 | 1 | 1,250 | 1250",
        "thousands of thousands elsewhere  | 300 | 1,234,567 g | 1,250 | 1250",
        "the gram of a kilogram            | 300.5 | 1 | 1.250 | 1.25",
      })
  void takesWhatTheFileShows(String why, String height, String other, String mass, double kg)
      throws InputException {
    String sheet =
        HEADER + "1;spin-36;300;20;%s\n2;spin-36;%s;20;%s\n".formatted(mass, height, other);
    for (char mark : new char[] {'.', ','}) {
      ShotTableReading reading = read(written(sheet, mark), TableOptions.FIND);
      assertThat(reading.shotList().jobs().get(0).item().massKg()).as(why).isEqualTo(kg);
      assertThat(reading.notes().remarks())
          .as("it is told")
          .anyMatch(line -> line.contains(written(mass, mark) + " as ") && line.contains("since"));
    }
  }

  @Test
  void takesThreeDecimalsInMillimetresOnlyFromAColumnThatHasThem() throws InputException {
    String sheet = HEADER + "1;spin-36;%s;20;1\n2;spin-36;30.000;20;1\n";
    ShotTableReading reading = read(sheet.formatted("1250.000"), TableOptions.FIND);
    assertThat(reading.shotList().jobs().get(1).item().heightMm()).isEqualTo(30);
    assertThat(reading.notes().remarks())
        .containsExactly(
            "Height (mm): 1 number with two meanings was read, 30.000 as 30.000 (row 3, column C),"
                + " since row 2, column C has 1250.000");
    assertThat(
            catchThrowableOfType(
                InputException.class, () -> read(sheet.formatted("12.5"), TableOptions.FIND)))
        .as("a decimal of the column proves nothing about three")
        .isNotNull();
  }

  @Test
  void tellsWhatAGivenMarkMadeOfThem() throws InputException {
    String sheet = HEADER + "1;spin-36;1,250;20.5;2.5\n";
    ShotTableReading reading = read(sheet, TableOptions.FIND.withDecimalMark('.'));
    assertThat(reading.shotList().jobs().get(0).item().heightMm()).isEqualTo(1250);
    assertThat(reading.notes().remarks())
        .containsExactly(
            "Height (mm): 1 number with two meanings was read, 1,250 as 1250 (row 2, column C),"
                + " since the decimal mark was given");
  }

  @Test
  void warnsOfSmallSizesAndOfDecimalsThatAreRoundedAway() throws InputException {
    String sheet = HEADER + "1;spin-36;1.25;20;1\n2;spin-36;300;0.4;1\n3;spin-36;300.5;0.5;1\n";
    List<String> remarks = read(sheet, TableOptions.FIND).notes().remarks();
    assertThat(remarks)
        .containsExactly(
            "Height (mm): 2 sizes were rounded, such as 1.25 to 1 mm (row 2, column C)",
            "Height (mm): 1 size is under 10 mm, 1 mm (row 2, column C); check unit and decimal"
                + " mark",
            "Width (cm): 2 sizes are under 10 mm, such as 4 mm (row 3, column D); check unit and"
                + " decimal mark");
    assertThat(read(HEADER + "1;spin-36;300;20;1\n", TableOptions.FIND).notes().remarks())
        .isEmpty();
  }

  /** The same sheet with the other mark. */
  private static String written(String text, char mark) {
    return mark == '.'
        ? text
        : text.replace(", ", "\u0001")
            .replace(',', '\u0002')
            .replace('.', ',')
            .replace('\u0002', '.')
            .replace("\u0001", ", ");
  }

  private static ShotTableReading read(String text, TableOptions options) throws InputException {
    return ReadTable.csv(text.getBytes(StandardCharsets.UTF_8), "list.csv", options);
  }
}
