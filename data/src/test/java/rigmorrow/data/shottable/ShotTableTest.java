package rigmorrow.data.shottable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.data.Formats;
import rigmorrow.data.SafeFile;
import rigmorrow.data.column.TableNotes;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.table.TableForm;
import rigmorrow.data.table.TableOptions;
import rigmorrow.model.shot.Hanging;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.Power;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;

class ShotTableTest {
  private static final ShotTableOptions OPTIONS =
      new ShotTableOptions(ReadTable.DATE, 2, TableOptions.FIND);

  @Test
  void readsADanishSheetInWindows1252() throws Exception {
    ShotTableReading reading = sample("danish-windows-1252");
    ShotJob vase = reading.shotList().jobs().get(0);
    assertThat(vase.id()).isEqualTo("00417");
    assertThat(vase.name()).isEqualTo("Rød vase på sokkel");
    assertThat(vase.gtin()).isEqualTo("6291041500213");
    assertThat(sizes(vase.item())).containsExactly(125, 125, 310);
    assertThat(vase.item().massKg()).isEqualTo(1.234);
    assertThat(vase.item().glass()).isTrue();
    assertThat(vase.arrivesAt()).isEqualTo(LocalDateTime.of(2026, 11, 26, 8, 30));
    assertThat(vase.promise()).isEqualTo(new Promise(LocalDateTime.of(2026, 11, 26, 16, 0), true));
    assertThat(vase.weight()).isEqualTo(5);
    assertThat(vase.setup().values()).isEqualTo(Map.of("background", "white"));
    ShotJob cloak = reading.shotList().jobs().get(1);
    assertThat(sizes(cloak.item())).containsExactly(600, 400, 1_100);
    assertThat(cloak.item().massKg()).isEqualTo(2.5);
    assertThat(reading.shotList().jobs().get(2).item().lengthMm()).isEqualTo(1_235);
    assertThat(reading.notes())
        .isEqualTo(
            new TableNotes(
                TableForm.ofText("Windows-1252", ';'),
                ',',
                List.of("Hylde"),
                List.of(
                    "Længde (cm): 2 values converted from cm to mm",
                    "Bredde (cm): 3 values converted from cm to mm"),
                List.of(
                    "Vægt (kg): 1 number with two meanings was read, 1,234 as 1.234 (row 2, column"
                        + " G), since the file has a decimal comma",
                    "Højde [mm]: 1 number with two meanings was read, 1.100 as 1100 (row 3, column"
                        + " F), since row 5, column D has 1.234,5",
                    "Længde (cm): 1 size was rounded, 1234.5 to 1235 mm (row 5, column D)")));
  }

  @Test
  void readsAGermanSheet() throws Exception {
    ShotTableReading reading = sample("german");
    ShotJob bottle = reading.shotList().jobs().get(0);
    assertThat(bottle.article()).isEqualTo("0007");
    assertThat(bottle.recipe()).isEqualTo("spin-36");
    assertThat(sizes(bottle.item())).containsExactly(80, 80, 302);
    assertThat(bottle.item().massKg()).isEqualTo(0.65);
    assertThat(bottle.item().heightSource()).isEqualTo(HeightSource.DEVICE);
    assertThat(bottle.must()).isTrue();
    Item stool = reading.shotList().jobs().get(1).item();
    assertThat(stool.massKg()).isEqualTo(1.25);
    assertThat(stool.heightSource()).isEqualTo(HeightSource.HAND);
  }

  @Test
  void readsTabbedUtf16WithUnitsInTheCells() throws Exception {
    ShotTableReading reading = sample("tab-utf-16");
    List<ShotJob> jobs = reading.shotList().jobs();
    assertThat(jobs).extracting(ShotJob::name).containsExactly("Vase, tall", "5\" plate");
    assertThat(jobs).extracting(job -> job.item().massKg()).containsExactly(1.5, 0.4);
    assertThat(jobs).extracting(job -> job.item().heightMm()).containsExactly(310, 20);
    assertThat(reading.notes().form().delimiter()).isEqualTo('\t');
    assertThat(reading.notes().form().charset()).isEqualTo("UTF-16");
  }

  @Test
  void convertsInchesAndPounds() throws Exception {
    ShotTableReading reading = sample("inch-pound");
    ShotJob lamp = reading.shotList().jobs().get(0);
    assertThat(lamp.article()).isEqualTo("00417");
    assertThat(lamp.name()).isEqualTo("Lamp, \"Nord\"");
    assertThat(sizes(lamp.item())).containsExactly(254, 216, 419);
    assertThat(lamp.item().massKg()).isEqualTo(0.997903214);
    assertThat(lamp.item().power()).isEqualTo(new Power(120, 60, "A"));
    ShotJob chair = reading.shotList().jobs().get(1);
    assertThat(chair.name()).isEqualTo("Chair\nwith arms");
    assertThat(sizes(chair.item())).containsExactly(635, 600, 900);
    assertThat(reading.notes().conversions())
        .contains(
            "W (in): 1 value converted from cm to mm",
            "Weight (lb): 2 values converted from lb to kg");
  }

  @Test
  void readsAByteOrderMarkADelimiterLineAndTheNamesOfTheJsonFields() throws Exception {
    ShotTableReading reading = sample("utf-8-mark");
    List<ShotJob> jobs = reading.shotList().jobs();
    assertThat(jobs).extracting(ShotJob::id).containsExactly("J-1", "J-2");
    assertThat(jobs.get(0).item().heightMm()).isEqualTo(310);
    assertThat(jobs.get(1).item().hanging()).isEqualTo(new Hanging(0.4, 350, true));
    assertThat(jobs.get(1).item().measured()).isFalse();
    assertThat(reading.notes().unknownColumns()).containsExactly("In stock");
  }

  @Test
  void saysThatThereAreNoPromisesWhereTheyMayBeInAColumnThatWasNotRead() throws Exception {
    String row = "\n00417,spin-36,16:00\n";

    assertThat(read("Article,Recipe,Wanted" + row, TableOptions.FIND).notes().lines())
        .contains("column 'Wanted' is not known and was not read")
        .anyMatch(line -> line.startsWith("no column was read as Due"));
    assertThat(read("Article,Recipe,Lovet" + row, TableOptions.FIND).notes().lines())
        .noneMatch(line -> line.startsWith("no column was read as Due"));
    assertThat(read("Article,Recipe\n00417,spin-36\n", TableOptions.FIND).notes().lines())
        .noneMatch(line -> line.startsWith("no column was read as Due"));
  }

  @Test
  void namesJobsOfOneArticleByTheirRecipes() throws Exception {
    ShotTableReading reading =
        read("Article,Recipe\n00417,spin-36\n00418,spin-36\n00417,Stills 4\n", TableOptions.FIND);
    List<ShotJob> jobs = reading.shotList().jobs();
    assertThat(jobs)
        .extracting(ShotJob::id)
        .containsExactly("00417/spin-36", "00418", "00417/stills-4");
    assertThat(jobs).extracting(ShotJob::sample).containsExactly("00417", "00418", "00417");
  }

  @Test
  void letsTheOtherNumbersOfTheFileSettleTheDecimalMark() throws Exception {
    String sheet = "Article;Recipe;Mass (kg);Height (mm)\n1;spin-36;1,234;%s\n";
    assertThat(mass(read(sheet.formatted("12,5"), TableOptions.FIND))).isEqualTo(1.234);
    assertThatThrownBy(() -> read(sheet.formatted("12.5"), TableOptions.FIND))
        .as("a decimal point elsewhere is no proof that the comma divides thousands")
        .isInstanceOf(InputException.class)
        .hasMessageContaining("row 2, column C, Mass (kg): '1,234'; accepted: 1.2340 or 1234");
    assertThatThrownBy(() -> read(sheet.formatted("12"), TableOptions.FIND))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("row 2, column C, Mass (kg): '1,234'; accepted: 1,2340 or 1234");
  }

  @Test
  void letsTheUserSayTheDecimalMark() throws Exception {
    String sheet = "Article;Recipe;Mass (kg)\n1;spin-36;1,234\n";
    assertThat(mass(read(sheet, withDecimalMark(',')))).isEqualTo(1.234);
    assertThat(mass(read(sheet, withDecimalMark('.')))).isEqualTo(1_234);
    assertThatThrownBy(
            () -> read("Article;Recipe;Mass (kg)\n1;spin-36;1,5\n", withDecimalMark('.')))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("a number with a decimal point");
  }

  @Test
  void saysWhenNumbersAreWrittenInTwoWays() throws Exception {
    ShotTableReading reading =
        read("Article;Recipe;Mass (kg)\n1;spin-36;1,5\n2;spin-36;2.5\n", TableOptions.FIND);
    assertThat(reading.shotList().jobs())
        .extracting(job -> job.item().massKg())
        .containsExactly(1.5, 2.5);
    assertThat(reading.notes().decimalMark()).isNull();
    assertThat(reading.notes().lines()).anyMatch(line -> line.contains("each was read by itself"));
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t"})
  void findsTheDelimiterByTheKnownHeaders(String delimiter) throws Exception {
    String header = String.join(delimiter, "Article", "\"a,b;c\td,e;f\tg,h;i\tj\"", "Recipe");
    String row = String.join(delimiter, "1", "x", "spin-36");
    ShotTableReading reading = read(header + "\n" + row + "\n", TableOptions.FIND);
    assertThat(reading.notes().form().delimiter()).isEqualTo(delimiter.charAt(0));
    assertThat(reading.shotList().jobs()).hasSize(1);
  }

  @Test
  void obeysAGivenDelimiterAndCharacterSet() throws Exception {
    byte[] sheet =
        "Article;Recipe;Name\n1;spin-36;Кресло\n".getBytes(Charset.forName("windows-1251"));
    ShotTableReading reading =
        ReadTable.csv(
            sheet,
            "list.csv",
            TableOptions.FIND.withDelimiter(';').withCharset(Charset.forName("windows-1251")));
    assertThat(reading.shotList().jobs().get(0).name()).isEqualTo("Кресло");
    assertThatThrownBy(
            () -> read("Article;Recipe\n1;spin-36\n", TableOptions.FIND.withDelimiter(',')))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("this header has one column");
  }

  @ParameterizedTest
  @CsvSource({
    "Height (cm),100", "height_cm,100", "HEIGHT-CM,100", "Height cm,100", "Height in cm,100",
    "heightMm,10", "Højde [mm],10", "Hoejde (mm),10", "Höhe in mm,10", "Hoehe (inch),254",
    "H (m),10000", "height in,254", "' Height ( CM ) ',100"
  })
  void readsTheUnitOfAHeader(String header, int heightMm) throws Exception {
    ShotTableReading reading =
        read("Article;Recipe;" + header + "\n1;spin-36;10\n", TableOptions.FIND);
    assertThat(reading.shotList().jobs().get(0).item().heightMm()).isEqualTo(heightMm);
  }

  @ParameterizedTest
  @CsvSource({
    "yes,true",
    "JA,true",
    "x,true",
    "1,true",
    "wahr,true",
    "no,false",
    "Nej,false",
    "nein,false",
    "0,false",
    "FALSE,false",
    "'',false"
  })
  void readsYesAndNo(String written, boolean glass) throws Exception {
    ShotTableReading reading =
        read("Article;Recipe;Glass\n1;spin-36;" + written + "\n", TableOptions.FIND);
    assertThat(reading.shotList().jobs().get(0).item().glass()).isEqualTo(glass);
  }

  @Test
  void countsRowsAsASpreadsheetDoes() {
    String sheet =
        "\r\nArticle,Recipe,Name\r\n\r\n1,spin-36,\"two\r\nlines\"\r\n,,\r\n2,nope,x\r\n";
    assertThatThrownBy(() -> read(sheet, TableOptions.FIND))
        .hasMessageContaining("row 6, column B, Recipe: 'nope'");
  }

  @Test
  void refusesACellLongerThanASpreadsheetKeeps() {
    String sheet = "Article,Recipe,Name\n1,spin-36," + "x".repeat(32_768) + "\n";
    assertThatThrownBy(() -> read(sheet, TableOptions.FIND))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("row 2:")
        .hasMessageContaining("32767");
  }

  @Test
  void namesAFileThatIsNotThere(@TempDir Path folder) {
    Path missing = folder.resolve("missing.csv");
    assertThatThrownBy(() -> Formats.readShotTable(missing, SmallFloor.FLOOR, OPTIONS))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("a file that is there");
  }

  @Test
  void readsAFileByItsPath(@TempDir Path folder) throws Exception {
    ShotTableReading reading = sample("german");
    Path file = folder.resolve("list.csv");
    Formats.writeShotTable(reading.shotList(), file, SafeFile.Existing.KEEP);
    assertThat(Formats.isTable(file)).isTrue();
    assertThat(Formats.readShotTable(file, SmallFloor.FLOOR, OPTIONS).shotList())
        .isEqualTo(reading.shotList());
  }

  private static TableOptions withDecimalMark(char mark) {
    return TableOptions.FIND.withDecimalMark(mark);
  }

  private static double mass(ShotTableReading reading) {
    return reading.shotList().jobs().get(0).item().massKg();
  }

  private static List<Integer> sizes(Item item) {
    return List.of(item.lengthMm(), item.widthMm(), item.heightMm());
  }

  private static ShotTableReading read(String text, TableOptions options) throws InputException {
    return ReadTable.csv(text.getBytes(StandardCharsets.UTF_8), "list.csv", options);
  }

  private static ShotTableReading sample(String name) throws IOException, InputException {
    try (var stream = ShotTableTest.class.getResourceAsStream("/shotlist-csv/" + name + ".csv")) {
      return ReadTable.csv(stream.readAllBytes(), name + ".csv", TableOptions.FIND);
    }
  }
}
