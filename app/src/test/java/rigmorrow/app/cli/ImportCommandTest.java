package rigmorrow.app.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.app.cli.Runner.Ran;
import rigmorrow.app.terminal.Text;

class ImportCommandTest {
  private static final String FLOOR = "in/floor.yaml";
  private static final String RECIPE = "spin-3x36";
  private static final String DANISH =
      "Varenr.;Opskrift;Varenavn;Længde (cm);Bredde (cm);Højde (cm);Vægt (kg);Hylde\r\n"
          + "00417;"
          + RECIPE
          + ";Rød vase;12,5;12,5;31;1,25;B7\r\n"
          + "00418;"
          + RECIPE
          + ";Kande;12,5;12,5;;;B8\r\n";

  @TempDir static Path folder;

  @BeforeAll
  static void writeFiles() throws IOException {
    Ran demo = Runner.run(folder, "demo", "--write-only", "--jobs", "12", "--out", "in");
    assertThat(demo.exitCode()).as(demo.err()).isZero();
    Files.write(folder.resolve("dansk.csv"), DANISH.getBytes(Charset.forName("windows-1252")));
    Files.writeString(
        folder.resolve("sizes.csv"),
        "Article,Height (mm),Mass (g)\n00418,250,900\n00417,310,1300\n");
  }

  @Test
  void saysHowADanishSpreadsheetWasUnderstood() {
    Ran ran = run("dansk.csv");
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(ran.out())
        .contains(
            "2 jobs for 2026-03-04, days: 1; 1 to be measured",
            "text Windows-1252, delimiter semicolon, decimal mark comma",
            "Længde (cm): 2 values converted from cm to mm",
            "column 'Hylde' is not known and was not read",
            "00418 Kande: heightMm, massKg missing");
    assertThat(ran.out().lines()).allMatch(line -> Text.columns(line) <= 80);
    assertThat(ran.err().strip()).isEqualTo("only checked; --out writes the list");
  }

  /**
   * Written by an old program: in code page 850, ae is byte 91, which Windows-1252 has as a quote.
   */
  @Test
  void readsTheCharacterSetThatIsNamed() throws IOException {
    byte[] old = DANISH.replace("Længde", "Laengde").getBytes(Charset.forName("ibm850"));
    Files.write(folder.resolve("old.csv"), old);
    Ran named = run("old.csv", "--charset", "ibm850");
    assertThat(named.exitCode()).as(named.err()).isZero();
    assertThat(named.out()).contains("text IBM850", "Laengde (cm): 2 values converted");
    assertThat(run("old.csv").out()).contains("column 'V‘gt (kg)' is not known and was not read");
    Ran wrong = run("old.csv", "--charset", "dansk");
    assertThat(wrong.exitCode()).isEqualTo(2);
    assertThat(wrong.err()).contains("no character set is called 'dansk'");
  }

  /** As above: in Windows-1252 the heading of the weight would be another, and one no one knows. */
  @Test
  void readsSizesInTheCharacterSetThatIsNamedForTheListOrForThem() throws IOException {
    Charset old = Charset.forName("ibm850");
    String sizes = "Article;Vægt (kg)\n00418;0,9\n00417;1,3\n";
    Files.write(folder.resolve("old-sizes.csv"), sizes.getBytes(old));
    Files.write(folder.resolve("old-list.csv"), DANISH.replace("Længde", "Laengde").getBytes(old));
    assertThat(filled("old-list.csv", "old-sizes.csv", "--charset", "ibm850")).isEqualTo(1);
    assertThat(filled("dansk.csv", "old-sizes.csv", "--sizes-charset", "ibm850")).isEqualTo(1);
    Files.write(folder.resolve("new-sizes.csv"), sizes.getBytes(UTF_8));
    assertThat(
            filled(
                "old-list.csv", "new-sizes.csv", "--charset", "ibm850", "--sizes-charset", "utf-8"))
        .isEqualTo(1);
    for (String list : List.of("windows-1252 dansk.csv", "ibm850 old-list.csv")) {
      String[] named = list.split(" ");
      assertThat(filled(named[1], "new-sizes.csv", "--charset", named[0])).as("UTF-8").isEqualTo(1);
    }
    Ran forced =
        run("dansk.csv", "--sizes", "new-sizes.csv", "--sizes-charset", "windows-1252", "--json");
    assertThat(forced.exitCode()).as("their own set holds").isEqualTo(2);
    Files.write(folder.resolve("marked.csv"), ("\uFEFF" + sizes).getBytes(UTF_8));
    assertThat(filled("dansk.csv", "marked.csv", "--charset", "windows-1252")).isEqualTo(1);
    Files.write(
        folder.resolve("wide.csv"),
        sizes.replace("Vægt", "Mass").getBytes(StandardCharsets.UTF_16LE));
    Files.write(folder.resolve("wide-list.csv"), DANISH.getBytes(StandardCharsets.UTF_16LE));
    assertThat(filled("wide-list.csv", "wide.csv", "--charset", "utf-16le"))
        .as("no letters beyond ASCII")
        .isEqualTo(1);
    Ran found = run("dansk.csv", "--sizes", "old-sizes.csv");
    assertThat(found.exitCode()).as("nobody can know it").isEqualTo(2);
    Ran without = run("dansk.csv", "--sizes-charset", "ibm850");
    assertThat(without.exitCode()).isEqualTo(2);
    assertThat(without.err()).contains("--sizes FILE with it");
  }

  /** How many values the sizes fill in. */
  private static int filled(String list, String sizes, String... more) {
    List<String> options = new ArrayList<>(List.of("--sizes", sizes, "--json"));
    options.addAll(List.of(more));
    Ran ran = run(list, options.toArray(String[]::new));
    assertThat(ran.exitCode()).as(ran.err() + ran.out()).isZero();
    return ran.json().at("/sizes/filled").asInt();
  }

  /** It is known, but it only guesses at what it reads, and nothing can be written in it. */
  @Test
  void refusesACharacterSetInWhichNothingCanBeWritten() {
    assertThat(Charset.forName("x-JISAutoDetect").canEncode()).isFalse();
    Ran ran = run("dansk.csv", "--charset", "x-JISAutoDetect");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err())
        .contains("nothing can be written in 'x-JISAutoDetect'; accepted: names such as utf-8");
  }

  @Test
  void saysOfAListInYamlWhichSizesAreSmall() throws IOException {
    Files.writeString(
        folder.resolve("small.yaml"),
        "version: 1\ndate: 2026-03-04\ndays: 1\njobs:\n- {id: '1', recipe: %s, widthMm: 4}\n"
            .formatted(RECIPE));
    String line = "widthMm: 1 size is under 10 mm, 4 mm (jobs[0]); check unit and decimal mark";
    Ran ran = run("small.yaml");
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(ran.out().replaceAll("\\s+", " ")).contains("looks odd " + line);
    assertThat(run("small.yaml", "--json").json().get("remarks").get(0).asText()).isEqualTo(line);
    Ran fit = Runner.run(folder, "fit", FLOOR, "small.yaml");
    assertThat(fit.err()).contains("small.yaml: " + line);
  }

  @ParameterizedTest
  @ValueSource(strings = {"a.json", "a.yaml", "deep/er/a.csv"})
  void writesAListThatIsReadLikeTheFirst(String out) {
    Ran ran = run("dansk.csv", "--out", out);
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(ran.err()).contains("written: " + out);
    assertThat(fit(out)).isEqualTo(fit("dansk.csv"));
  }

  @Test
  void printsOneDocument() {
    JsonNode json = run("dansk.csv", "--sizes", "sizes.csv", "--json").json();
    assertThat(json.get("jobs").asInt()).isEqualTo(2);
    assertThat(json.get("unmeasured")).isEmpty();
    assertThat(json.get("read").get("delimiter").asText()).isEqualTo(";");
    assertThat(json.get("read").get("decimalMark").asText()).isEqualTo(",");
    assertThat(json.get("read").get("sheet").isNull()).isTrue();
    assertThat(json.get("read").get("unknownColumns").get(0).asText()).isEqualTo("Hylde");
    assertThat(json.get("sizes").get("filled").asInt()).isEqualTo(2);
    assertThat(json.get("sizes").get("differences").get(0).get("field").asText())
        .isEqualTo("massKg");
    assertThat(json.get("written").isNull()).isTrue();
    assertThat(run("dansk.csv").out()).contains("1 to be measured");
  }

  @Test
  void readsAWorkbookAndNamesSheetRowAndColumn() throws IOException {
    workbook("list.xlsx", "no-such");
    Ran refused = run("list.xlsx", "--annotated", "mend.xlsx");
    assertThat(refused.exitCode()).isEqualTo(2);
    assertThat(refused.out()).isEmpty();
    assertThat(refused.err())
        .contains("annotated copy written: mend.xlsx")
        .contains("sheet 'Thursday', row 3, column B, Recipe: 'no-such'");
    Ran again = run("mend.xlsx");
    assertThat(again.exitCode()).isEqualTo(2);
    assertThat(again.err()).contains("1 problem\n  sheet 'Thursday', row 3, column B");
    workbook("sound.xlsx", RECIPE);
    Ran sound = run("sound.xlsx");
    assertThat(sound.exitCode()).as(sound.err()).isZero();
    assertThat(sound.out()).contains("2 jobs", "sheet 'Thursday', decimal mark");
    assertThat(Runner.run(folder, "fit", FLOOR, "sound.xlsx").err())
        .contains("sound.xlsx: sheet 'Thursday'");
  }

  @Test
  void asksForASheetAndTakesTheOneThatIsNamed() throws IOException {
    workbook("two.xlsx", RECIPE, "Friday");
    Ran asked = run("two.xlsx");
    assertThat(asked.exitCode()).isEqualTo(2);
    assertThat(asked.err()).contains("--sheet").contains("Thursday, Friday");
    assertThat(run("two.xlsx", "--sheet", "Friday").exitCode()).isZero();
    assertThat(run("two.xlsx", "--sheet", "Firday").err()).contains("did you mean Friday?");
  }

  @Test
  void letsACopyBeMendedAndReadAgain() throws IOException {
    Files.writeString(
        folder.resolve("bad.csv"),
        "Article;Recipe;Height (cm)\n1;no-such;30\n2;" + RECIPE + ";x\n");
    Ran refused = run("bad.csv", "--annotated", "mend.csv", "--json");
    assertThat(refused.json().get("error").get("problems")).hasSize(2);
    Path copy = folder.resolve("mend.csv");
    String text = Files.readString(copy);
    assertThat(text).startsWith("Article;Recipe;Height (cm);problems\n1;no-such;30;\"B Recipe:");
    Files.writeString(copy, text.replace("1;no-such", "1;" + RECIPE).replace(";x;", ";31;"));
    Ran mended = run("mend.csv");
    assertThat(mended.exitCode()).as(mended.err()).isZero();
    assertThat(mended.out()).contains("2 jobs").doesNotContain("problems");
  }

  @Test
  void neverReplacesWhatItReadsAndOthersOnlyWhenTold() throws IOException {
    Path list = folder.resolve("mine.csv");
    Files.writeString(list, "Article,Recipe\n1,no-such\n");
    for (String option : List.of("--annotated", "--out")) {
      for (String target : List.of("mine.csv", "./in/../mine.csv")) {
        Ran ran = run("mine.csv", option, target, "--overwrite");
        assertThat(ran.exitCode()).isEqualTo(2);
        assertThat(ran.err()).contains("a file that is read is never replaced");
      }
    }
    assertThat(run("mine.csv", "--out", "x.csv", "--annotated", "x.csv").exitCode()).isEqualTo(2);
    assertThat(list).hasContent("Article,Recipe\n1,no-such\n");
    Path other = Files.writeString(folder.resolve("other.csv"), "precious");
    Ran refused = run("mine.csv", "--annotated", "other.csv");
    assertThat(refused.err()).contains("is there already", "--overwrite");
    assertThat(other).hasContent("precious");
    run("mine.csv", "--annotated", "other.csv", "--overwrite");
    assertThat(other).content().startsWith("Article,Recipe,problems");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "dansk.csv|--annotated a.xlsx|ends as the shot list's: .csv",
        "dansk.csv|--out a.txt|.json, .yaml, .yml or .csv",
        "list.json|--annotated a.csv|a shot list that is CSV or XLSX",
        "dansk.csv|--sizes none.csv|a file that is there",
        "dansk.csv|--prefer-sizes|--sizes FILE with it",
        "dansk.csv|--sheet A|no sheet, since a text has none",
        "dansk.csv|--sizes sizes.csv --sizes-sheet A|no sheet, since a text has none"
      })
  void refusesWhatCannotBe(String list, String options, String accepted) {
    Ran ran = run(list, options.split(" "));
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains(accepted);
  }

  @Test
  void writesNothingWhenTheListIsBad() throws IOException {
    Files.writeString(folder.resolve("bad2.csv"), "Article,Recipe\n1,no-such\n");
    assertThat(run("bad2.csv", "--out", "never.json").exitCode()).isEqualTo(2);
    assertThat(folder.resolve("never.json")).doesNotExist();
  }

  @Test
  void annotatesOnlyProblemsOfTheListItself() throws IOException {
    Files.writeString(folder.resolve("bad-sizes.csv"), "Article,Height (mm)\n00418,tall\n");
    Ran ran = run("dansk.csv", "--sizes", "bad-sizes.csv", "--annotated", "no.csv");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("bad-sizes.csv: 1 problem", "are not those of the shot list");
    assertThat(folder.resolve("no.csv")).doesNotExist();
    assertThat(run("dansk.csv", "--annotated", "no.csv").err()).contains("there are no problems");
    assertThat(folder.resolve("no.csv")).doesNotExist();
  }

  @Test
  void tellsTheProblemsThoughTheCopyCannotBeWritten() throws IOException {
    Files.writeString(folder.resolve("bad3.csv"), "Article,Recipe\n1,no-such\n");
    Ran ran = run("bad3.csv", "--annotated", "x".repeat(300) + ".csv", "--json");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("no annotated copy, it could not be written", "'no-such'");
    assertThat(ran.json().get("error").get("problems")).hasSize(1);
  }

  @Test
  void tellsWhyAnEmptySheetHasNoCopy() throws IOException {
    try (OutputStream out = Files.newOutputStream(folder.resolve("empty.xlsx"));
        Workbook workbook = new Workbook(out, "test", null)) {
      fill(workbook.newWorksheet("Thursday"), RECIPE);
      workbook.newWorksheet("Empty");
    }
    Ran ran = run("empty.xlsx", "--sheet", "Empty", "--annotated", "no.xlsx");
    assertThat(ran.exitCode()).as(ran.err()).isEqualTo(2);
    assertThat(ran.err())
        .contains("no annotated copy: file: nothing there; accepted: a header row")
        .contains("empty.xlsx: 1 problem\n  file: nothing there");
    assertThat(folder.resolve("no.xlsx")).doesNotExist();
  }

  @Test
  void takesSizesInEveryCommandThatReadsAList() {
    Ran fit = Runner.run(folder, "fit", FLOOR, "dansk.csv", "--sizes", "sizes.csv");
    assertThat(fit.exitCode()).as(fit.err()).isZero();
    assertThat(fit.out()).contains("0 need measuring");
    assertThat(fit.err())
        .contains("sizes.csv: 2 articles measured, 2 jobs of them, 2 values filled in")
        .contains("job 00417: massKg 1.25 in the list, 1.3 by the device; the list's is taken");
    assertThat(run("dansk.csv", "--sizes", "sizes.csv", "--prefer-sizes", "--out", "p.json").out())
        .contains("the device's is taken");
    assertThat(folder.resolve("p.json")).content().contains("1.3").contains("\"device\"");
  }

  @Test
  void asksForTheMarkOfTheSizesByItsOwnOption() throws IOException {
    Files.writeString(folder.resolve("two-meanings.csv"), "Article;Mass (kg)\n00418;1,234\n");
    assertThat(run("dansk.csv", "--sizes", "two-meanings.csv").err()).contains("--sizes-decimal");
    Ran ran = run("dansk.csv", "--sizes", "two-meanings.csv", "--sizes-decimal", ",");
    assertThat(ran.exitCode()).as(ran.err()).isZero();
  }

  @Test
  void refusesACsvThatHasPinsToKeep() throws IOException {
    Files.writeString(
        folder.resolve("pinned.json"),
        """
        {"version": 1, "date": "2026-03-04",
         "jobs": [{"id": "1", "recipe": "%s"}],
         "pins": [{"job": "1", "rig": "R1"}]}
        """
            .formatted(RECIPE));
    Ran ran = run("pinned.json", "--out", "pinned.csv");
    assertThat(ran.exitCode()).as(ran.err()).isEqualTo(2);
    assertThat(ran.err()).contains("pins, which CSV cannot keep");
    assertThat(folder.resolve("pinned.csv")).doesNotExist();
  }

  @Test
  void refusesACsvThatHasJobsToLeaveOutByHand() throws IOException {
    Files.writeString(
        folder.resolve("held.json"),
        """
        {"version": 1, "date": "2026-03-04",
         "jobs": [{"id": "1", "recipe": "%s"}],
         "heldBack": ["1"]}
        """
            .formatted(RECIPE));
    Ran ran = run("held.json", "--out", "held.csv");
    assertThat(ran.exitCode()).as(ran.err()).isEqualTo(2);
    assertThat(ran.err()).contains("jobs left out by hand, which CSV cannot keep");
    assertThat(folder.resolve("held.csv")).doesNotExist();
  }

  private static Ran run(String list, String... more) {
    List<String> arguments = new ArrayList<>(List.of("import", FLOOR, list));
    arguments.addAll(List.of(more));
    return Runner.run(folder, arguments.toArray(String[]::new));
  }

  private static String fit(String list) {
    return Runner.run(folder, "fit", FLOOR, list, "--json").out();
  }

  private static void workbook(String name, String secondRecipe, String... moreSheets)
      throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    List<String> sheets = new ArrayList<>(List.of("Thursday"));
    sheets.addAll(List.of(moreSheets));
    try (Workbook workbook = new Workbook(out, "test", null)) {
      for (String sheet : sheets) {
        fill(workbook.newWorksheet(sheet), secondRecipe);
      }
    }
    Files.write(folder.resolve(name), out.toByteArray());
  }

  private static void fill(Worksheet sheet, String secondRecipe) {
    String[] header = {"Article", "Recipe", "Height (mm)"};
    for (int column = 0; column < header.length; column++) {
      sheet.value(0, column, header[column]);
    }
    sheet.value(1, 0, 4711);
    sheet.value(1, 1, RECIPE);
    sheet.value(1, 2, 310);
    sheet.value(2, 0, 4712);
    sheet.value(2, 1, secondRecipe);
    sheet.value(2, 2, 250);
  }
}
