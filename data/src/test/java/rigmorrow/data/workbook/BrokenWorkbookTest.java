package rigmorrow.data.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static rigmorrow.data.workbook.RawWorkbook.number;
import static rigmorrow.data.workbook.RawWorkbook.text;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.shottable.ReadTable;
import rigmorrow.data.table.TableOptions;

/** Workbooks with one defect each: every one is told in one clear line. */
class BrokenWorkbookTest {
  private static final String HEADER = "Article|Recipe|Height (mm)";
  private static final byte[] COMPOUND_FILE = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};

  @ParameterizedTest(name = "{0}")
  @MethodSource("samples")
  void tellsWhatIsWrongInOneLine(String defect, byte[] bytes, String told) {
    assertThat(lines(bytes, TableOptions.FIND)).as(defect).containsExactly(told);
  }

  static Stream<Arguments> samples() throws IOException {
    byte[] sound = RawWorkbook.ofTexts("T", HEADER, "1|spin-36|300").bytes();
    byte[] corrupt = sound.clone();
    Arrays.fill(corrupt, sound.length / 3, sound.length / 3 + 40, (byte) 0x55);
    String damaged =
        "file: 'a file that is damaged'; accepted: a workbook (.xlsx) that a spreadsheet opens and"
            + " saves again";
    String noWorkbook =
        "file: 'no workbook'; accepted: a workbook (.xlsx); the name of a CSV file ends in .csv";
    return Stream.of(
        sample(
            "no bytes",
            new byte[0],
            "file: nothing there; accepted: a header row and at least one job"),
        sample("CSV named .xlsx", utf8("Article;Recipe\n1;spin-36\n"), noWorkbook),
        sample("any bytes", new byte[] {1, 2, 3}, noWorkbook),
        sample(
            "cut off",
            Arrays.copyOf(sound, sound.length / 2),
            "file: 'a file that is cut off'; accepted: a workbook that is complete"),
        sample("overwritten inside", corrupt, damaged),
        sample(
            "old workbook",
            joined(COMPOUND_FILE, new byte[600]),
            "file: 'a workbook of the old kind (.xls)'; accepted: a workbook saved as .xlsx"),
        sample(
            "password",
            joined(COMPOUND_FILE, "EncryptedPackage".getBytes(StandardCharsets.UTF_16LE)),
            "file: 'a workbook with a password'; accepted: a workbook saved without a password"),
        sample(
            "other archive",
            RawWorkbook.zipped(Map.of("mimetype", "text", "content.xml", "<x/>")),
            "file: 'an archive that is no workbook'; accepted: a workbook (.xlsx)"),
        sample("no list of sheets", without(sound(), "xl/workbook.xml"), damaged),
        sample("no sheet", without(sound(), "xl/worksheets/sheet1.xml"), damaged),
        sample("no relations", without(sound(), "xl/_rels/workbook.xml.rels"), damaged),
        sample(
            "sheet cut off",
            changed("xl/worksheets/sheet1.xml", "</row></sheetData>", ""),
            damaged),
        sample(
            "document type",
            changed(
                "xl/worksheets/sheet1.xml",
                "<worksheet",
                "<!DOCTYPE w [<!ENTITY e SYSTEM \"file:///etc/passwd\">]><worksheet a=\"&e;\""),
            damaged),
        sample(
            "cells that would fill memory",
            new RawWorkbook().sheet("T").raw("<row r=\"1\"><c r=\"ZZZZZZ1\"/></row>").bytes(),
            "sheet 'T', row 1: 'cell 'ZZZZZZ1''; accepted: cells from A to XFD, from left to right"),
        sample(
            "text number that would fill memory",
            new RawWorkbook()
                .sheet("T")
                .raw("<row r=\"1\"><c t=\"s\"><v>999999999</v></c></row>")
                .bytes(),
            "sheet 'T', row 1, column A: ''999999999''; accepted: a value as a spreadsheet writes"
                + " it"),
        sample(
            "kind of cell unknown",
            new RawWorkbook()
                .sheet("T")
                .raw("<row r=\"2\"><c r=\"B2\" t=\"q\"><v>2026-11-26</v></c></row>")
                .bytes(),
            "sheet 'T', row 2, column B: 'a cell of the kind 'q''; accepted: the workbook saved"
                + " again by a spreadsheet"),
        sample(
            "number no double holds",
            new RawWorkbook()
                .sheet("T")
                .texts(HEADER)
                .row(text("1"), text("spin-36"), number("1E+999999999"))
                .bytes(),
            "sheet 'T', row 2, column C, Height (mm): '1E+999999999'; accepted: a number that a"
                + " spreadsheet can hold"),
        sample(
            "empty workbook",
            new RawWorkbook().sheet("A").sheet("B").bytes(),
            "file: nothing there; accepted: a header row and at least one job"),
        sample(
            "header only",
            RawWorkbook.ofTexts("T", HEADER).bytes(),
            "sheet 'T', row 2: nothing there; accepted: at least one job below the header"),
        sample(
            "one column",
            new RawWorkbook().sheet("T").rowAt(2, "", text("Article")).row("", text("1")).bytes(),
            "sheet 'T', row 2: 'Article'; accepted: several columns; this header has one column"),
        sample(
            "several sheets",
            RawWorkbook.ofTexts("Thursday", HEADER, "1|spin-36|")
                .sheet("Friday")
                .texts(HEADER, "1|spin-36|")
                .bytes(),
            "file, --sheet: nothing there; accepted: to name the sheet that is meant: Thursday,"
                + " Friday"),
        sample(
            "no known sheet",
            RawWorkbook.ofTexts("A", "x|y", "1|2").sheet("B").texts("x|y", "1|2").bytes(),
            "file, --sheet: nothing there; accepted: a sheet with the columns Article or Id and"
                + " Recipe; there is none of: A, B"),
        sample(
            "only a hidden sheet",
            RawWorkbook.ofTexts("Notes", "Read me").sheet("Old", "hidden").texts(HEADER).bytes(),
            "file, --sheet: nothing there; accepted: to name the hidden sheet that is meant: Old"),
        sample(
            "too wide",
            new RawWorkbook()
                .sheet("T")
                .raw("<row r=\"1\"><c r=\"XFD1\"><v>1</v></c></row>")
                .bytes(),
            "sheet 'T', row 1, column XFD: '1'; accepted: at most 1000 columns"),
        sample(
            "too long",
            new RawWorkbook().sheet("T").raw("<row/>".repeat(100_001)).bytes(),
            "sheet 'T', row 100001: 'more than 100000 rows'; accepted: at most 100000 rows"),
        sample(
            "zip bomb",
            zeros(),
            "file: 'more than 134217728 bytes unpacked'; accepted: a workbook with at most that; a"
                + " shot list alone is much smaller"),
        sample(
            "absurd merge",
            RawWorkbook.ofTexts("T", HEADER, "1|spin-36|").merge("A2:ZZZ99999999").bytes(),
            "sheet 'T', row 2, column B: 'merged cells 'A2:ZZZ99999999''; accepted: at most 10000,"
                + " as A2:B3"),
        sample(
            "merges that overlap",
            RawWorkbook.ofTexts("T", HEADER, "1|spin-36|", "2|spin-36|")
                .merge("A2:A3")
                .merge("B2:B3")
                .merge("A3:C3")
                .bytes(),
            "sheet 'T', row 3, column A: 'merged cells 'A3:C3''; accepted: merged cells that share"
                + " no cell with others that are merged"),
        sample(
            "merges that would fill memory",
            wideAndMerged(),
            "sheet 'T': 'more than 1000000 merged cells'; accepted: at most that, counted as far as"
                + " there are rows and columns"));
  }

  @Test
  void suggestsTheSheetThatWasMeant() {
    byte[] bytes =
        RawWorkbook.ofTexts("Thursday", HEADER, "1|spin-36|").sheet("Friday").texts(HEADER).bytes();
    assertThat(lines(bytes, TableOptions.FIND.withSheet("Thrusday")))
        .containsExactly(
            "file, --sheet: 'Thrusday'; accepted: a sheet: Thursday, Friday (did you mean"
                + " Thursday?)");
  }

  @Test
  void refusesASheetOfAFileThatHasNone() {
    TableOptions sheet = TableOptions.FIND.withSheet("Thursday");
    InputException refusal =
        catchThrowableOfType(
            InputException.class,
            () -> ReadTable.csv(utf8("Article,Recipe\n1,spin-36\n"), "list.csv", sheet));
    assertThat(refusal.problems())
        .extracting(InputProblem::line)
        .containsExactly("file, --sheet: 'Thursday'; accepted: no sheet, since a text has none");
  }

  private static List<String> lines(byte[] bytes, TableOptions options) {
    InputException refusal =
        catchThrowableOfType(InputException.class, () -> ReadTable.workbook(bytes, options));
    assertThat(refusal).isNotNull();
    return refusal.problems().stream().map(InputProblem::line).toList();
  }

  private static Arguments sample(String defect, byte[] bytes, String told) {
    return Arguments.of(defect, bytes, told);
  }

  private static Map<String, String> sound() {
    return RawWorkbook.ofTexts("T", HEADER, "1|spin-36|300").parts();
  }

  private static byte[] without(Map<String, String> parts, String part) {
    parts.remove(part);
    return RawWorkbook.zipped(parts);
  }

  private static byte[] changed(String part, String from, String to) {
    Map<String, String> parts = sound();
    parts.computeIfPresent(part, (name, text) -> text.replace(from, to));
    return RawWorkbook.zipped(parts);
  }

  /** 500 columns of 2,100 rows are merged, and the rows have one cell each. */
  private static byte[] wideAndMerged() {
    String[] wide = new String[1_000];
    Arrays.fill(wide, text("x"));
    RawWorkbook book = new RawWorkbook().sheet("T").row(wide);
    for (int row = 0; row < 2_100; row++) {
      book.texts("1");
    }
    return book.merge("A2:SF2101").bytes();
  }

  /** 200 MB of zeros take 200 kB in a zip file. */
  private static byte[] zeros() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      zip.putNextEntry(new ZipEntry("xl/sharedStrings.xml"));
      for (int megabyte = 0; megabyte < 200; megabyte++) {
        zip.write(new byte[1_000_000]);
      }
    }
    return bytes.toByteArray();
  }

  private static byte[] joined(byte[] first, byte[] second) {
    byte[] both = Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, both, first.length, second.length);
    return both;
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
